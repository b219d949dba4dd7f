/** Templates of the findings of the foot's frame, each in three tellings. `{name}` is filled by the wording. */
export const LOAD_SENTENCES = {
  'loadPull.both': {
    patient:
      'In the model the {pulledSide} of the bone is pulled hardest and the {pressedSide} is pressed hardest. {massNote}',
    broadcast:
      'In the model, {activity} pulls hardest on the {pulledSide} of the bone and presses hardest on the {pressedSide}. {massNote}',
    study:
      '{activity}: nine tenths of the largest pull or more lie {plateau} from {end}, on the {pulledSide}; the largest push is on the {pressedSide}. {massNote}',
  },
  'loadPull.pulled': {
    patient:
      'In the model the {pulledSide} of the bone is pulled hardest. Which side is pressed hardest, it cannot tell. {massNote}',
    broadcast:
      'In the model, {activity} pulls hardest on the {pulledSide} of the bone; which side is pressed hardest, it cannot tell. {massNote}',
    study:
      '{activity}: nine tenths of the largest pull or more lie {plateau} from {end}, on the {pulledSide}. The model cannot tell which side is pressed hardest. {massNote}',
  },
  'loadPull.pressed': {
    patient:
      'In the model the {pressedSide} of the bone is pressed hardest. Which side is pulled hardest, it cannot tell. {massNote}',
    broadcast:
      'In the model, {activity} presses hardest on the {pressedSide} of the bone; which side is pulled hardest, it cannot tell. {massNote}',
    study:
      '{activity}: nine tenths of the largest pull or more lie {plateau} from {end}; the largest push is on the {pressedSide}. The model cannot tell which side is pulled hardest; the run that is drawn pulls the {pulledSide}. {massNote}',
  },
  'loadPull.neither': {
    patient: 'Which side of the bone is pulled or pressed hardest, the model cannot tell. {massNote}',
    broadcast: 'Which side of the bone {activity} pulls or presses hardest, the model cannot tell. {massNote}',
    study:
      '{activity}: nine tenths of the largest pull or more lie {plateau} from {end}. The model cannot tell which side is pulled or pressed hardest; the run that is drawn pulls the {pulledSide}. {massNote}',
  },
  oddRun: {
    patient: 'The run that is drawn is the odd one out.',
    broadcast: 'The run that is drawn is the odd one out.',
    study: 'The run with the told figures says the contrary: it is the odd one out.',
  },
  'loadRatio.sized': {
    patient:
      'In the model this pulls on the bone about {times} as hard as {reference}. It could be {low} to {high} times.',
    broadcast:
      'In the model {activity} pulls on this bone about {times} as hard as {reference}, somewhere from {low} to {high} times.',
    study:
      'Largest tension in this bone, {activity} against {reference}: {times}, {low} to {high} in the inner eight tenths of {draws} draws over all assumed figures ({unsolved} of them without an answer).',
  },
  'loadRatio.same': {
    patient: 'This is the movement that the others are held against.',
    broadcast: 'This is the movement that all others are held against in the model.',
    study: '{reference} is the measure itself: every ratio is told against it.',
  },
  'loadRatio.more': {
    patient: 'In the model this pulls on the bone harder than {reference}.',
    broadcast: 'In the model {activity} pulls on this bone harder than {reference}.',
    study:
      'Largest tension in this bone: {activity} above {reference} in {share} of {draws} draws; its size is beyond what the theory can state.',
  },
  'loadRatio.less': {
    patient: 'In the model this pulls on the bone less than {reference}.',
    broadcast: 'In the model {activity} pulls on this bone less than {reference}.',
    study:
      'Largest tension in this bone: {activity} below {reference} in {share} of {draws} draws; its size is beyond what the theory can state.',
  },
  'loadRatio.unsure': {
    patient:
      'Whether this pulls on the bone harder than {reference}, the model cannot tell. It could be {low} to {high} times.',
    broadcast:
      'Whether {activity} pulls on this bone harder than {reference}, the model cannot tell: it could be {low} to {high} times.',
    study:
      'The model cannot tell whether {activity} pulls on this bone harder than {reference}: {share} of {draws} draws agree; {low} to {high} times in their inner eight tenths.',
  },
  'loadRatio.cannotTell': {
    patient: 'Whether this pulls on the bone harder than {reference}, the model cannot tell.',
    broadcast: 'Whether {activity} pulls on this bone harder than {reference}, the model cannot tell.',
    study:
      'The model cannot tell whether {activity} pulls on this bone harder than {reference}: {share} of {draws} draws agree.',
  },
  'loadSide.enough': {
    patient: 'Most runs of the model agree on the side: the {side} is stretched.',
    broadcast: 'Nearly all runs of the model agree that the {side} is the one stretched.',
    study: '{share} of the draws put the largest tension within 45 degrees of the same direction ({side}).',
  },
  'loadSide.cannotTell': {
    patient: 'Which side is stretched most, the model cannot tell.',
    broadcast: 'Which side is stretched most, the model cannot tell.',
    study: 'The model cannot tell which side is stretched most: {share} of the draws agree.',
  },
  'loadMostOfFive.most': {
    patient: 'Of the five long bones this one is stretched most.',
    broadcast: 'Of the five metatarsals this one is stretched most.',
    study: 'The largest tension of the five metatarsals is in this one in {share} of the draws.',
  },
  'loadMostOfFive.notMost': {
    patient: 'Of the five long bones another one is stretched more.',
    broadcast: 'Of the five metatarsals another one is stretched more.',
    study: 'Another metatarsal carries a larger tension in {share} of the draws.',
  },
  'loadMostOfFive.cannotTell': {
    patient: 'Which of the five long bones is stretched most, the model cannot tell.',
    broadcast: 'Which of the five metatarsals is stretched most, the model cannot tell.',
    study: 'The model cannot tell whether this metatarsal is stretched most: {share} of the draws agree.',
  },
  pullPending: {
    patient: 'Such breaks are found in {occurs}. Whether the bone is pulled hardest there is being worked out.',
    broadcast: 'These breaks are found in {occurs}; whether the bone is pulled hardest there is being worked out.',
    study: 'Breaks of this class lie in {occurs}; where the plateau of tension lies waits for the draws.',
  },
  pullUnsure: {
    patient: 'Such breaks are found in {occurs}. Whether the hardest pull is there too, the model cannot tell.',
    broadcast: 'These breaks are found in {occurs}; whether the hardest pull is there too, the model cannot tell.',
    study:
      'The model cannot tell whether the plateau of tension, as told {plateau} from {end}, takes in {occurs}, where breaks of this class lie: {share} of the draws agree.',
  },
  'pullAgrees.inside': {
    patient: 'In the model a long stretch is pulled hard. It takes in {occurs}, where such breaks are found.',
    broadcast:
      'In the model a long stretch of the bone is pulled hard, and {occurs}, where these breaks are found, is part of it.',
    study:
      'The plateau of tension, {plateau} from {end}, takes in {occurs}, where breaks of this class lie, in {share} of the draws. Beam theory speaks of {spoken} alone: a plateau can lie nowhere else.',
  },
  'pullAgrees.edge': {
    patient:
      'In the model the hardest pull reaches into {occurs}, where such breaks are found. Where the model ends, the pull may still be growing.',
    broadcast:
      'In the model the hardest pull reaches into {occurs}, where these breaks are found; where the model ends, it may still be growing.',
    study:
      'The plateau of tension that beam theory can state, {plateau} from {end}, takes in {occurs}, where breaks of this class lie, in {share} of the draws. The largest tension lies at the edge of the theory and may rise beyond. Beam theory speaks of {spoken} alone: a plateau can lie nowhere else.',
  },
  'pullDisagrees.inside': {
    patient:
      'The model puts the hardest pull in {peak}, but such breaks lie in {occurs}: bending alone does not explain this spot.',
    broadcast:
      'The model puts the hardest pull in {peak}, yet these breaks lie in {occurs}: bending alone does not explain this spot.',
    study:
      'The plateau of tension lies {plateau} from {end}, in {peak}; breaks of this class lie in {occurs}: no agreement in {share} of the draws, bending alone does not explain this site.',
  },
  'pullDisagrees.edge': {
    patient:
      'The model puts the hardest pull in {peak}, where the model ends, but such breaks lie in {occurs}: bending alone does not explain this spot.',
    broadcast:
      'The model puts the hardest pull in {peak}, where the model ends, yet these breaks lie in {occurs}: bending alone does not explain this spot.',
    study:
      'The plateau of tension that beam theory can state lies {plateau} from {end}, with the largest at the edge of the theory, in {peak}; it may rise beyond. Breaks of this class lie in {occurs}: no agreement in {share} of the draws, bending alone does not explain this site.',
  },
  'pullSilent.alone': {
    patient: 'The model has nothing to say in {occurs}, where such breaks are found.',
    broadcast: 'The model has nothing to say in {occurs}, where these breaks are found.',
    study: 'Breaks of this class lie in {occurs}, where no section stays flat: beam theory states nothing there.',
  },
  'pullSilent.beyond': {
    patient:
      'The model has nothing to say in {occurs}, where such breaks are found. Beyond it, the hardest pull is in {peak}.',
    broadcast:
      'The model has nothing to say in {occurs}, where these breaks are found; beyond it, the hardest pull is in {peak}.',
    study:
      'Breaks of this class lie in {occurs}, where no section stays flat: beam theory states nothing there. The tension that it can state is highest {plateau} from {end}, in {peak}. Neither agreement nor disagreement.',
  },
  'pullSilent.unsure': {
    patient:
      'The model has nothing to say in {occurs}, where such breaks are found. Beyond it, it cannot tell where the pull is hardest.',
    broadcast:
      'The model has nothing to say in {occurs}, where these breaks are found; beyond it, it cannot tell where the pull is hardest.',
    study:
      'Breaks of this class lie in {occurs}, where no section stays flat: beam theory states nothing there. Where it can, the draws do not agree on one part with the largest tension; as told it lies {plateau} from {end}. Neither agreement nor disagreement.',
  },
  beamLeavesOut: {
    patient:
      'The model leaves things out at the base: its joint as a pivot, the thin wall there, and the sudden change of stiffness.',
    broadcast:
      'The model leaves out the joint as a pivot, the thin wall near the base, and the sudden change of stiffness there.',
    study:
      'Left out in {region}: the facet as a fulcrum, shear lag in the metaphysis, its thin cortex and spongy bone, the abrupt change of stiffness, contact.',
  },
  outsideBeam: {
    patient: 'Where the bone is hatched, the model has nothing to say.',
    broadcast: 'Where the bone is hatched, the model has nothing to say.',
    study: 'Outside beam theory (hatched): {stretches} from {end}.',
  },
  'oneStep.below': {
    patient: 'One such step alone bends healthy bone less than it takes to break it. It takes many, or a weak spot.',
    broadcast: 'One such step alone bends healthy bone less than it takes to break it: it takes many, or a weak spot.',
    study:
      'One step or many: {ratio} the load of {reference}; hard bone gives way in one pull at about {factor} of it. Bending in one such step stays below that in healthy bone.',
  },
  'oneStep.within': {
    patient: 'Whether one such step alone could break the bone, the model cannot tell.',
    broadcast: 'Whether one such step alone could break the bone, the model cannot tell.',
    study:
      'One step or many: {ratio} the load of {reference}; hard bone gives way in one pull at about {factor} of it. The two overlap: the model cannot tell.',
  },
  'oneStep.ranking': {
    patient: 'Whether one such step alone could break the bone, the model cannot tell: it is too rough for that here.',
    broadcast:
      'Whether one such step alone could break the bone, the model cannot tell: it is too rough for that here.',
    study:
      'One step or many: no size can be stated for {activity}, so that it is not held against what hard bone bears.',
  },
  'oneStep.above': {
    patient: 'In the model one such step alone bends the bone enough to break it.',
    broadcast: 'In the model one such step alone bends the bone enough to break it.',
    study:
      'One step or many: {ratio} the load of {reference}; hard bone gives way in one pull at about {factor} of it. One such step reaches that.',
  },
  loadForces: {
    patient: 'The band under the sole pulls with about {fascia} in the model, the heel cord with {achilles}.',
    broadcast: 'In the model the band under the sole pulls with about {fascia}, and the heel cord with {achilles}.',
    study: '{activity}: plantar fascia {fascia}, Achilles tendon {achilles}, tibia on talus {tibia}.',
  },
  'loadStation.all': {
    patient: 'The numbers along the bone differ from run to run of the model.',
    broadcast: 'Along the bone most runs of the model agree which way each of {all} numbers acts.',
    study:
      'At {at} from {end}, where the pull is largest ({activity}; in brackets the inner eight tenths of {draws} draws): {numbers}. {measure} The sign of each of the {all} numbers in the table of stations has the agreement of four fifths of the draws.',
  },
  'loadStation.some': {
    patient: 'The numbers along the bone differ from run to run of the model.',
    broadcast:
      'Along the bone the runs of the model differ: of {all} numbers they agree on the direction in {sure}, and for the others the model cannot tell.',
    study:
      'At {at} from {end}, where the pull is largest ({activity}; in brackets the inner eight tenths of {draws} draws): {numbers}. {measure} Of the {all} numbers in the table of stations the sign of {sure} has the agreement of four fifths of the draws; for the others the model cannot tell.',
  },
  'loadAlong.pending': {
    patient: 'The ground pushes along itself too.',
    broadcast: 'In {activity} the ground pushes along itself with {ratio} of what it pushes up.',
    study:
      '{activity}: the ground pushes along itself with {ratio} of what it pushes across (horizontal over vertical where it is level); what the leg holds against it waits for the draws.',
  },
  'loadAlong.ranking': {
    patient: 'The ground pushes along itself too.',
    broadcast: 'In {activity} the ground pushes along itself with {ratio} of what it pushes up.',
    study:
      '{activity}: the ground pushes along itself with {ratio} of what it pushes across (horizontal over vertical where it is level); what the leg holds against it has no size that the theory can state.',
  },
  'loadAlong.turningOut': {
    patient: 'The ground pushes along itself too.',
    broadcast:
      'In {activity} the ground pushes along itself with {ratio} of what it pushes up, and the leg holds about {along} against it.',
    study:
      '{activity}: the ground pushes along itself with {ratio} of what it pushes across (horizontal over vertical where it is level). The bones of the leg hold {along} against it at the ankle, and keep the foot from turning out with {moment}.',
  },
  'loadAlong.turningIn': {
    patient: 'The ground pushes along itself too.',
    broadcast:
      'In {activity} the ground pushes along itself with {ratio} of what it pushes up, and the leg holds about {along} against it.',
    study:
      '{activity}: the ground pushes along itself with {ratio} of what it pushes across (horizontal over vertical where it is level). The bones of the leg hold {along} against it at the ankle, and keep the foot from turning in with {moment}.',
  },
  'loadAlong.either': {
    patient: 'The ground pushes along itself too.',
    broadcast:
      'In {activity} the ground pushes along itself with {ratio} of what it pushes up, and the leg holds about {along} against it.',
    study:
      '{activity}: the ground pushes along itself with {ratio} of what it pushes across (horizontal over vertical where it is level). The bones of the leg hold {along} against it at the ankle. Their moment on the foot is {moment}, positive against turning out; which way, the model cannot tell.',
  },
  'loadFlagged.fasciaAboveStrength': {
    patient:
      'Here the model pulls the band under the sole harder than it can bear. So trust only what is more and what is less.',
    broadcast:
      'Here the model pulls the band under the sole harder than it can bear, so only more and less can be trusted.',
    study: 'Unphysical: the fascia carries more than tore it in the laboratory (1189 N, SD 244). Ranking only.',
  },
  'loadFlagged.largeTurns': {
    patient: 'Here the bones turn further than the model allows for. So trust only what is more and what is less.',
    broadcast: 'Here the bones turn further than the model allows for, so only more and less can be trusted.',
    study: 'Turns of the bones exceed {degrees}, beyond small-displacement theory (chosen). Ranking only.',
  },
  'loadFlagged.slips': {
    patient: 'Here the shoe would slip on most floors.',
    broadcast: 'Here the shoe would slip on most floors.',
    study:
      'The ground pushes along itself by more than 0.8 of what it pushes across: most soles slip before that (from memory).',
  },
  loadUnknown: {
    patient: 'Not known here: {unknown}',
    broadcast: 'Not known here: {unknown}',
    study: 'Not known in this task: {unknown}',
  },
  otherEdge: {
    patient: 'Which edge was loaded is for you to say. The picture can show the other way: {other}.',
    broadcast: 'Which edge of the foot was loaded has to be chosen: the other way is {other}.',
    study: 'Which edge is loaded is a choice and no result; the other one is {other}.',
  },
  'loadFails.outside': {
    patient: 'With these values the foot would tip over, so there is no answer.',
    broadcast: 'With these values the foot would tip over, so there is no answer.',
    study: 'No answer: the centre of pressure lies outside the foot.',
  },
  'loadFails.noStiffness': {
    patient: 'With these values a joint would hold nothing, so there is no answer.',
    broadcast: 'With these values a joint would hold nothing, so there is no answer.',
    study: 'No answer: a joint has no stiffness{at}.',
  },
  'loadFails.notSettled': {
    patient: 'With these values the model finds no answer.',
    broadcast: 'With these values the model finds no answer.',
    study: 'No answer: contact and balance did not settle within the bound on passes.',
  },
  'loadFails.calfPushes': {
    patient: 'With these values the heel cord would have to push, so there is no answer.',
    broadcast: 'With these values the heel cord would have to push, which no cord can, so there is no answer.',
    study:
      'No answer: balance about the ankle asks the Achilles tendon to push. What pulls the foot up in front is no part of the model.',
  },
  'loadFails.absurd': {
    patient: 'With these values the foot would be bent out of shape, so there is no answer.',
    broadcast: 'With these values the foot would be bent out of shape, so there is no answer.',
    study: 'No answer: displacements exceed what small-displacement theory can state{at}.',
  },
  'loadFails.badMass': {
    patient: 'No body weighs that much, so there is no answer.',
    broadcast: 'No body weighs that much, so there is no answer.',
    study: 'No answer: a mass that no body has.',
  },
  'loadFails.badFigure': {
    patient: 'One of these values cannot be, so there is no answer.',
    broadcast: 'One of these values cannot be, so there is no answer.',
    study: 'No answer: a figure of the frame that cannot be{at}.',
  },
  'loadFails.inexact': {
    patient: 'With these values the model finds no answer.',
    broadcast: 'With these values the model finds no answer.',
    study: 'No answer: stiffnesses lie too far apart for forces to balance to the digits that are told.',
  },
  loadPending: {
    patient: 'How far these numbers can be trusted is being worked out.',
    broadcast: 'How far these numbers can be trusted is being worked out.',
    study: 'The bands over all assumed figures are being computed.',
  },
} as const;
