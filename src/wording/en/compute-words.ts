/** What a computation does, in words, by its id. */
export const COMPUTE_WORDS: Readonly<Record<string, string>> = {
  'case.claim': 'Taken from the case as it was claimed.',
  'case.notStated': 'The case has no claim on this.',
  'case.contradiction': 'The case holds current claims that differ; none was chosen over another.',
  'content.text': 'Text of the content, with the source that stands beside it.',
  'where.brokenHere': 'The stated place, located on the drawn bone.',
  'where.jointHurt': 'The stated place, located on the drawn bone; the class is of a joint.',
  'where.boneHurt': 'The stated bone; no place along it was stated.',
  'where.nothing': 'The case names neither a bone nor a place.',
  'where.sideDefault': 'The case has no current claim on the side.',
  'where.neighbours': 'The bones that share a joint surface with it, heel to toe.',
  'where.zoneBorder':
    'Parts are found along the axis of the bone: those of the fifth metatarsal from both edges of its joint surface towards the fourth, zone 3 being the next 15 mm of shaft; those of other bones by the rule that stands with the part.',
  'where.breakDrawn':
    'Distance along the axis of the bone from the end at which its length begins; a named part is drawn at its middle.',
  'where.attached': 'Attachments whose footprint has its middle in this part of the drawn bone.',
  'where.classFits':
    'The only class of the content that fits this place, where the place alone decides it or the stated way of breaking is one of its own.',
  'where.computedClass':
    'The rules of the scheme, held against the stated place and measures. A value on a border belongs to the class that begins there.',
  'where.classOpen': 'All classes of the content that fit this place.',
  'where.placeAgainstClass': 'The stated place against the place where this class lies.',
  'where.alsoNumbered': 'Looked up in the record of this class, with the edition of the list.',
  'where.code':
    'The root of the code list, with characters for side, displacement and visit by its rules. The character of usual healing stands alone where a confirmed follow-up says that the bone heals; an open break is for whoever codes.',
  'where.codesBeside': 'Looked up in the record of this class.',
  'where.codeOfGrowing': 'Looked up in the record of this class, as an age with open growth plates is stated.',
  'where.codeAnew': 'A follow-up says that it broke again, and the character for usual healing would be wrong.',
  'back.clash': 'A measured gap and what is said of the joint cannot both hold, so that no class follows.',
  'where.measureOfOther': 'The stated measure against the classes of the content whose rules ask for it.',
  'where.apartAgainstClass':
    'What is stated of how far the pieces stand apart, against the least that speaks for another kind of break. That limit is common practice.',
  'where.gapAgainstWord':
    'The measured gap against the word on whether the joint is displaced. It begins where the first class with a gap does.',
  'how.unknown': 'The case states neither the way it happened nor a class.',
  'how.usual': 'The ways of breaking that the content lists for this class.',
  'how.model': 'The kind of model that the content states for this way of breaking.',
  'how.loadPull':
    'The whole foot is solved as a frame: bones, joints as springs, ties that only pull, pads that only press, the calf from balance. Sections are cut from the bone on the plate, less its canal; N, V, M and T follow by balance from the frame, and stress = N/A + M·c/I on both axes, the largest on the outline.',
  'how.loadRatio':
    'The same frame run in this task and in push-off of walking, told and in a hundred seeded draws of everything assumed or uncertain whose arch lengthens under load as the calibrated foot’s; the ratio of the largest tensions, and where the inner eight tenths of the draws lie.',
  'how.loadSide': 'In how many of the draws the largest tension keeps within 45 degrees of the told direction.',
  'how.loadMostOfFive': 'In how many of the draws the largest tension of the five metatarsals is in this one.',
  'how.pullAgainstBreaks':
    'Stations that carry nine tenths of the largest tension or more, in every draw, against the part where published breaks of this class lie; in how many draws it is as with the told values.',
  'how.pullPending': 'The ensemble runs after the told values.',
  'how.beamLeavesOut': 'What a beam has no part for.',
  'how.outsideBeam':
    'Within one depth of a held end, and where the bone is thicker than a third of its length, sections do not stay flat: the model has nothing to say there.',
  'how.contributor':
    'The same draws run again with this one thing changed; the ratio of the largest tensions, how far the middle of the stretch that carries nine tenths of them moves along the bone, and how many draws agree on either. A shift of 1 mm or less is not told.',
  'how.contributorPublished': 'What was published on it, for and against, as it was read.',
  'how.oneStep':
    'The ratio to walking, against the strain at which hard bone gives way over the strain measured in this bone when walking.',
  'how.loadForces': 'Forces of the same runs over body weight.',
  'how.loadStation':
    'N, V, M, T, pull and push at every station of the bone in the same draws: the inner eight tenths of each, and in how many of them it has the sign of the told run. Where fewer than four fifths do, which way it acts is not told. Stress is over the largest pull in the bone, of the reference task or, where only ranks may be told, of the task itself, in the same draw; strain is the same multiple.',
  'how.loadAlong':
    'The ground’s push along itself over its push across, as put in with the task; what the springs that hold the talus to the leg carry level, and their moment about the way the foot points.',
  'how.loadSensitivity':
    'Squared rank correlation of the ratio with each figure over the draws; named only above what the largest of so many unrelated figures reaches by chance, five times in a hundred, and in either half of the draws with the same sign.',
  'how.loadFlagged': 'A bound that the told run passes.',
  'how.loadUnknown': 'What the content says is not known of this task.',
  'how.otherEdge': 'The task that the content names as the same on the other edge.',
  'how.loadFails': 'Why the frame finds no answer.',
  'how.loadPending': 'The ensemble runs after the told values.',
  'why.unknown': 'The case states no class and no place.',
  'trouble.count':
    'What one group counted, as printed. Where no interval was printed it is worked out from count and whole (Wilson, 95 %). It is of that group, never of one person.',
  'trouble.range':
    'The lowest and the highest of what was counted in groups with this treatment or, where none is, with its kind.',
  'trouble.notCounted': 'Looked up among the rates and the study arms of the content for this class.',
  'content.contradiction':
    'Sources of the content that say different things, each with its mark, and what is done about it here.',
  'why.noVessels': 'The content has no vessel that ends in this bone.',
  'why.fedBy':
    'The bone is filled with some 3,000 cells; each goes to the entry that is nearest through cells. The main feeder of a part is the one that takes most of it, unless a source names another: then the source goes before.',
  'why.border':
    'Where the cells of two feeders meet across the bone: the middle of that surface, and half the stretch that eight tenths of it take.',
  'why.breakLeaves':
    'The break takes away every way across it between cells; what is torn and what the operation itself takes are ways of the graph of vessels that are gone. Main feeder: a territory, or as a source says; it still counts where it reaches half of the part.',
  'options.unknown': 'The case states no class and no place.',
  'options.notUsual': 'The treatment in force, looked for among the options that the content lists for this class.',
  'options.usual': 'The options that the content lists for this class.',
  'options.trial': 'Arms of one study, as printed.',
  'options.disagree':
    'Difference of two shares with its 95 % interval (Wilson; Newcombe 1998, method 10): apart when the interval leaves out zero.',
  'options.support':
    'The frame of the foot run in push-off of walking barefoot and with this one thing, told and in a hundred seeded draws of everything assumed or uncertain; the ratio of the largest tensions, how far the middle of the stretch that carries nine tenths of them moves along the bone, and how many draws agree on either. A shift of 1 mm or less is not told.',
  'options.supportPublished': 'What was published on it, for and against, as it was read.',
  'back.stageToday': 'The usual share of body weight of this stage, times the mass that the case states.',
  'back.stageOvershoot': 'The shares of the study, times the mass that the case states.',
  'back.stageSheet': 'Looked up among what single clinics and studies wrote of this stage.',
  'back.stageLoad':
    'The frame of the foot under that share of body weight, over pushing off barefoot in plain walking, in many draws of all assumed figures.',
  'back.stageLoadPending': 'Waits for the draws.',
  'back.stageNoLoad': 'No ground force, no load in the frame.',
  'options.supportStandIn': 'What is put into the frame in place of a boot.',
  'options.supportPending': 'The ensemble runs after the told values.',
  'options.screwShare':
    'Cortex cut from the bone on the plate and the screw’s core strain together (transformed section), under the load that the frame finds there in push-off of walking, in forty draws of load, bone stiffness and cortex.',
  'options.screwBridge':
    'The screw’s core as a round bar alone: strain = M·c/(E·I) at the farthest cortex, yield moment = yield stress × 2I/d, M as the frame finds it in push-off of walking.',
  'options.screwLength':
    'The longest straight rod that stays in the canal seen from above and from the side, entering through the tuberosity, with the cortex at the usual and at both ends of its bands.',
  'options.screwNotModelled': 'The content has figures of a screw for the fifth metatarsal only.',
  'how.repeatedLoad': 'Damage goes with cycles and with strain to a power (Palmgren-Miner); the power over its range.',
  'back.lookAgain': 'The weeks that the content states for this class.',
  'back.brokenAgain': 'A follow-up of the case, later than the treatment in force.',
  'back.classDisputed': 'Claims of one measure that differ, each held against the rules of the class by itself.',
  'back.healsSlowly':
    'The latest follow-up that speaks of how the bone grows together, since the treatment in force began.',
  'where.boneClash': 'The stated bone against the bone that the stated part or class lies on.',
  'back.notCounted':
    'No arm with this class and treatment that counted to sport, or to work, was read in its source or abstract.',
  'back.growing': 'An age is stated at which growth plates may be open; every study here is of adults.',
  'back.unknown': 'The case states no class and no place.',
  'back.noRange': 'No arm with this class, treatment and a stated endpoint was read in its source or abstract.',
  'back.range': 'The lowest and highest centre of the comparable arms with this endpoint.',
  'back.depends': 'The lowest and highest centre of the comparable arms, treatment by treatment.',
  'back.classSooner': 'The lowest centre of the classes told, held against the steps of the treatment up to running.',
  'back.nextCheck':
    'The first stage with a criterion that is not ticked, or the one that the clinic said, and the week in which it ends.',
  'back.stepNotKnown': 'No stage was said or ticked, and a follow-up came after the usual weeks of the first.',
  'back.weightNotKnown': 'No stage was said or ticked, and a follow-up came after the usual weeks of the first.',
  'back.running': 'The week in which the step of running begins, as the content lists it for this class and treatment.',
  'back.sooner': 'The lowest centre of the comparable arms, held against the steps of the treatment up to running.',
  'back.harm': 'The commonest harm that the study counted in the arm whose time is told.',
  'back.dates': 'Calendar weeks added to the day from which weeks are counted.',
  'back.stage': 'The stage as the content lists it for this class and treatment.',
  'back.followUp': 'Whole weeks from the day from which weeks are counted to the day of the finding.',
  'back.borrowedScore':
    'Points of the score for the sides that the finding says are grown over, and one to two points, as the score has them, for each side that it says nothing of.',
  'back.timetableByStudy':
    'The weeks named, against each study that prints how its people lie apart, by its own fit; studies of different levels are not put together.',
  'back.stageAtReview':
    'The criteria of the stage that the clinic names, or of the first with one that is not ticked; ticked ones are left out.',
  'back.reviewPoints': 'What each finding of a follow-up says of the point that is asked for first.',
  'back.factorWaits': 'Weeks as printed, with and without the factor.',
  'back.forecast': 'What was forecast against what happened, counted in one study.',
};
