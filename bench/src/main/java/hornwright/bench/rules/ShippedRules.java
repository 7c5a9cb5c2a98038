package hornwright.bench.rules;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The rules as they come. A table rather than code, so that it can be read and argued about line by line.
 *
 * <p>Heights, hours, settling and the pad figures are what repairers say to each other; nobody has confirmed them in
 * print. Prices are inventions of the demo shop.
 */
final class ShippedRules {
    /** id | value | u | unit | least | most | what it says | what stands behind it. */
    private static final String TABLE = """
            pad.allowance_mm | 0 | 0 | mm | -1 | 1 | added to the mean inside diameter of the cup: +0.5 for a tight pad, 0, or -0.5 to float freely | common practice
            pad.step_mm | 0.5 | 0 | mm | 0.1 | 1 | step in which pad diameters are sold | common practice
            pad.oval_mm | 0.3 | 0 | mm | 0.05 | 2 | two inside diameters of a cup that differ by more are looked at before ordering | bench judgement
            pad.over-hole-least_mm | 3 | 0 | mm | 0 | 10 | a pad is at least so much wider than its hole | common practice
            pad.over-hole-most_mm | 6.5 | 0 | mm | 1 | 12 | a pad is at most so much wider than its hole | common practice
            adhesive.least_mm | 0.2 | 0 | mm | 0 | 2 | thinnest film under a pad that still covers the whole back | bench judgement
            adhesive.typical_mm | 0.5 | 0.15 | mm | 0.05 | 2 | film under a pad when nobody has aimed at anything | bench judgement
            adhesive.most_mm | 0.8 | 0 | mm | 0.1 | 3 | thickest film under a pad that still stays put | bench judgement
            adhesive.small-typical_mm | 0.3 | 0.1 | mm | 0.05 | 2 | film under an octave pad | bench judgement
            adhesive.small-least_mm | 0.1 | 0 | mm | 0 | 2 | thinnest film under an octave pad, which is stuck rather than floated | bench judgement
            pad.thin-look_mm | 1.3 | 0.3 | mm | 0 | 4 | how far a pad face should stand proud of the cup rim | common practice
            pad.thin-look-tolerance_mm | 0.5 | 0 | mm | 0 | 3 | how far the look may differ before it is mentioned | bench judgement
            parallel-gap.large_mm | 1.6 | 0.3 | mm | 0 | 5 | cup rim to hole rim with the key closed, holes of 15 mm and more, nobody has measured | bench judgement
            parallel-gap.small_mm | 1.3 | 0.3 | mm | 0 | 5 | the same for smaller holes | bench judgement
            parallel-gap.vent_mm | 0.9 | 0.25 | mm | 0 | 5 | the same for octave vents | bench judgement
            cup-depth.large_mm | 3.0 | 0.3 | mm | 0.5 | 8 | cup floor to cup rim, holes of 15 mm and more, nobody has measured | bench judgement
            cup-depth.small_mm | 2.5 | 0.3 | mm | 0.5 | 8 | the same for smaller holes | bench judgement
            cup-depth.from-pattern_mm | 0.2 | 0.2 | mm | 0 | 3 | a cup depth of this horn may differ so much from its pattern | bench judgement
            cup-depth.vent_mm | 1.9 | 0.3 | mm | 0.5 | 8 | the same for octave vents | bench judgement
            seat.depth_mm | 0.2 | 0.06 | mm | 0 | 1 | depth of a fresh seat in the pad face | common practice
            trial.level_mm | 0.05 | 0 | mm | 0.01 | 0.2 | a trial pad is called level when the feeler opposite reads less | bench judgement
            pad.thickness-within_mm | 0.06 | 0 | mm | 0.01 | 0.3 | a pad thickness is good to so much; a window narrower than its own uncertainty is not claimed | bench judgement
            resonator.clearance_mm | 3 | 0 | mm | 0 | 20 | a resonator is at least so much smaller than its hole | common practice
            resonator.least-hole_mm | 14.5 | 0 | mm | 5 | 40 | smaller holes get a rivet, a stitched or a bare centre | common practice
            resonator.share-of-hole | 0.6 | 0.05 |  | 0.2 | 0.95 | usual resonator diameter as a share of the hole diameter | bench judgement
            hole.from-pattern_mm | 0.3 | 0.3 | mm | 0 | 3 | a hole of this horn may differ so much from its pattern | bench judgement
            arm.from-pattern_mm | 1.0 | 1.0 | mm | 0 | 5 | an axis to centre of this horn may differ so much from its pattern | bench judgement
            height.from-pattern_mm | 0.3 | 0.3 | mm | 0 | 3 | a factory height of this horn may differ so much from its pattern | bench judgement
            height.pads-differ_mm | 0.15 | 0.15 | mm | 0 | 1 | a new pad may hang so much higher or lower than the old one a height was read with | bench judgement
            group.differs_mm | 0.6 | 0 | mm | 0.05 | 3 | a piece may differ so much from the one measured for its whole group | bench judgement
            foot.from-pattern_mm | 0.4 | 0.4 | mm | 0 | 3 | a foot of this horn may have differed so much from its pattern | bench judgement
            ratio.foot-centre | 2.2 | 0.45 |  | 0.5 | 6 | rise at the cup centre for each millimetre taken off a key foot | common practice
            ratio.guard-centre | 1.0 | 0.12 |  | 0.3 | 2 | the same where the cup itself meets a guard | bench judgement
            ratio.turning-share | 0 | 0.008 |  | -0.1 | 0.1 | foot and cup lie a little below their axis, so that the rise for each millimetre differs from the arms by a share | bench judgement
            ratio.shim_mm | 1.0 | 0 | mm | 0.2 | 3 | the trial shim to ask for; a thinner one tells little | bench judgement
            foot.cut-full_mm | 0.4 | 0 | mm | 0 | 2 | a foot cut full is left so much over what it is expected to need | bench judgement
            foot.pull_mm | 0.035 | 0.009 | mm | 0.005 | 0.2 | one pull of the sanding strip takes off so much | common practice
            spring.from-pattern_mm | 0.05 | 0.05 | mm | 0 | 1 | the wire of a spring may differ so much from its pattern: one step of the drawer | bench judgement
            spring.pull-share | 1 | 0.12 |  | 0.3 | 3 | what a spring nobody has weighed pulls, as a share of its pattern | bench judgement
            touch.even-share | 0.1 | 0 |  | 0.01 | 0.5 | touches of a stack count as even when none is further from the middle one than this share | common practice
            touch.upper-stack.least_N | 0.34 | 0 | N | 0 | 5 | lightest usual touch of the upper stack | common practice
            touch.upper-stack.most_N | 0.54 | 0 | N | 0 | 5 | heaviest usual touch of the upper stack | common practice
            touch.lower-stack.least_N | 0.44 | 0 | N | 0 | 5 | lightest usual touch of the lower stack | common practice
            touch.lower-stack.most_N | 0.74 | 0 | N | 0 | 5 | heaviest usual touch of the lower stack | common practice
            touch.g-sharp.least_N | 0.64 | 0 | N | 0 | 5 | lightest usual G sharp touch | common practice
            touch.g-sharp.most_N | 0.93 | 0 | N | 0 | 5 | heaviest usual G sharp touch | common practice
            touch.table.least_N | 1.18 | 0 | N | 0 | 5 | lightest usual touch of the low table | common practice
            touch.table.most_N | 1.77 | 0 | N | 0 | 5 | heaviest usual touch of the low table | common practice
            touch.low.least_N | 0.74 | 0 | N | 0 | 5 | lightest usual touch of low C and E flat | common practice
            touch.low.most_N | 1.18 | 0 | N | 0 | 5 | heaviest usual touch of low C and E flat | common practice
            touch.side.least_N | 0.59 | 0 | N | 0 | 5 | lightest usual side touch | common practice
            touch.side.most_N | 0.93 | 0 | N | 0 | 5 | heaviest usual side touch | common practice
            touch.palm.least_N | 0.59 | 0 | N | 0 | 5 | lightest usual palm touch | common practice
            touch.palm.most_N | 0.93 | 0 | N | 0 | 5 | heaviest usual palm touch | common practice
            touch.octave.least_N | 0.78 | 0 | N | 0 | 5 | lightest usual octave thumb | common practice
            touch.octave.most_N | 1.18 | 0 | N | 0 | 5 | heaviest usual octave thumb | common practice
            balance.held-least_N | 0.3 | 0 | N | 0 | 5 | a pad that a lever holds shut against its own spring is held at least so hard | bench judgement
            regulation.closed_mm | 0.02 | 0 | mm | 0.001 | 0.1 | a gap up to so much counts as closed under a feeler | bench judgement
            regulation.wrong_mm | 0.3 | 0 | mm | 0.02 | 2 | a contact nobody has set may be too thick or too thin by so much | bench judgement
            regulation.cut-u_mm | 0.005 | 0 | mm | 0.001 | 0.2 | one standard uncertainty of a contact cut and sanded against a thickness gauge | bench judgement
            regulation.turn-u | 0.015 | 0 |  | 0.001 | 0.2 | one standard uncertainty, in turns, of how far an adjusting screw is turned by eye | bench judgement
            regulation.feel-times | 1.4 | 0.14 |  | 1 | 3 | under a feeler a key is pressed so many times as hard as its touch was made for | bench judgement
            regulation.give-share | 0.14 | 0 |  | 0 | 1 | pads, corks, springs and tubes of a horn give more or less than the pattern's, as if the force differed by this share | bench judgement
            regulation.force-times | 2 | 0 |  | 1 | 5 | regulation is judged so many times as hard as the touch was made for | bench judgement
            assembly.contact-u_mm | 0.05 | 0 | mm | 0 | 1 | one standard deviation of contacts and feet at first assembly | bench judgement
            assembly.arm-u_mm | 0.1 | 0 | mm | 0 | 2 | one standard deviation of arms taken from the pattern | bench judgement
            assembly.pad-u_mm | 0.03 | 0 | mm | 0 | 1 | one standard deviation of where a floated pad closes | bench judgement
            sound.repeat_cents | 3 | 0 | cents | 0.1 | 30 | one standard deviation of a note played twice by the same player, when no play test repeats one | bench judgement
            sound.model_cents | 4 | 0 | cents | 0 | 30 | one standard deviation of what the air column does not know of a note of a real horn | bench judgement
            sound.leak-times | 1 | 0.3 |  | 0.2 | 3 | what a leak takes from a note of a real horn, over what the air column says | bench judgement
            sound.effect-times | 1 | 0.1 |  | 0.5 | 2 | what a height does on a real horn, over what the air column says | bench judgement
            foot.least_mm | 0.4 | 0 | mm | 0.1 | 3 | a piece at a stop thinner than this wears through; no height is offered that asks for one | bench judgement
            foot.most_mm | 4.5 | 0 | mm | 1 | 10 | a piece at a stop thicker than this does not stay on; no height is offered that asks for one | bench judgement
            sound.bell-extra_mm | 0 | 0 | mm | -50 | 100 | the bell acts so much longer than waves in straight tubes say, because it flares; felt in the lowest two or three notes | bench judgement
            sound.note-within_cents | 10 | 0 | cents | 1 | 50 | a note further than this from its place, the common part taken off, is worth a height | bench judgement
            height.step-tolerance_mm | 0.4 | 0 | mm | 0.1 | 2 | a stack height this far off the line of its neighbours is the odd one out | bench judgement
            height.tell_mm | 0.3 | 0 | mm | 0.05 | 2 | a height further than this from its target is worth work | bench judgement
            link.full_mm | 0.3 | 0 | mm | 0 | 2 | a link contact cut full is left so much over its pattern | bench judgement
            play.accept_mm | 0.05 | 0 | mm | 0.01 | 0.3 | radial play at a hinge from which pad work waits for key fit | common practice
            play.tube-share | 1.0 | 0 |  | 0.3 | 2 | share of the tube length that play is taken over | common practice
            fit.aim_mm | 0.02 | 0 | mm | 0 | 0.1 | clearance between rod and tube of a well fitted key, at most | common practice
            fit.accept_mm | 0.03 | 0 | mm | 0.005 | 0.2 | clearance between rod and tube that may stay | common practice
            fit.edge_mm | 0.05 | 0 | mm | 0.005 | 0.5 | play at the edge of a cup that may stay | common practice
            fit.end-accept_mm | 0.05 | 0 | mm | 0.005 | 0.3 | play along the rod that may stay | common practice
            fit.end-worn_mm | 0.1 | 0 | mm | 0.01 | 0.5 | play along the rod from which it is taken out | common practice
            fit.swedge-share | 0.7 | 0 |  | 0.2 | 1 | share of its tube that must be closed, or the key is loose again within a year | common practice
            fit.swedge-most_mm | 0.15 | 0 | mm | 0.03 | 0.5 | clearance up to which a tube is closed; beyond it a larger rod or a bush | bench judgement
            rim.unmeasured_mm | 0.04 | 0.02 | mm | 0 | 0.5 | worst rim gap of a hole nobody has laid a flat disc on | bench judgement
            rim.level_mm | 0.02 | 0 | mm | 0 | 0.1 | worst rim gap a hole is levelled to | common practice
            seat.light_N | 0.5 | 0 | N | 0.05 | 3 | force of a light finger on a pad, at which pads are judged | bench judgement
            seat.width_mm | 1.2 | 0.3 | mm | 0.2 | 4 | width of the ring a pad presses on | common practice
            seat.leak-passes_mL_per_s | 0.5 | 0 | mL/s | 0 | 50 | a pad that lets less through at a light touch and 1 kPa counts as closed | bench judgement
            rim.accept_mm | 0.05 | 0 | mm | 0.005 | 0.3 | worst rim gap up to which floating the pad is enough | common practice
            rim.act_mm | 0.1 | 0 | mm | 0.01 | 0.5 | worst rim gap from which the hole is levelled first | common practice
            rim.aim_mm | 0.02 | 0 | mm | 0 | 0.1 | worst gap of a rim that counts as level | common practice
            rim.file-most_mm | 0.15 | 0 | mm | 0.01 | 1 | metal that may come off one rim in all | bench judgement
            octave.ring-least_mm | 0.3 | 0 | mm | 0 | 3 | least clearance of the neck ring while the neck vent is shut | bench judgement
            octave.ring-most_mm | 0.8 | 0 | mm | 0.1 | 5 | most clearance of the neck ring while the neck vent is shut | bench judgement
            octave.free-least_mm | 0.05 | 0 | mm | 0 | 3 | least clearance of another octave contact that must be free | bench judgement
            octave.free-most_mm | 0.6 | 0 | mm | 0.05 | 5 | most clearance of another octave contact that must be free | bench judgement
            octave.touch_mm | 0.03 | 0 | mm | 0 | 0.3 | a contact that must touch may show so much under a feeler | bench judgement
            table.tab-least_mm | 0.05 | 0 | mm | 0 | 1 | least clearance of a tab of the low table over the G♯ lever | bench judgement
            table.tab-most_mm | 0.3 | 0 | mm | 0.05 | 2 | most clearance of a tab of the low table over the G♯ lever | bench judgement
            table.over_mm | 0.2 | 0 | mm | 0 | 2 | most clearance of low B♭ over low B at rest | bench judgement
            touch.lost-accept_mm | 0.2 | 0 | mm | 0 | 2 | lost motion at a fingertip that may stay | common practice
            touch.lost-felt_mm | 0.3 | 0 | mm | 0.05 | 3 | lost motion at a fingertip that every player feels | common practice
            neck.round_mm | 0.03 | 0 | mm | 0.005 | 0.3 | a tenon may be out of round by so much | bench judgement
            neck.taper_mm | 0.02 | 0 | mm | 0.005 | 0.3 | a tenon may be tapered by so much | bench judgement
            neck.loose_mm | 0.05 | 0 | mm | 0.005 | 0.5 | a tenon may be smaller than its open receiver by so much | bench judgement
            neck.tenon-length_mm | 20 | 3 | mm | 5 | 60 | length of a tenon in its receiver, nobody has measured | bench judgement
            neck.cork-squeeze | 0.12 | 0.03 |  | 0 | 0.5 | share of its thickness a neck cork is squeezed by | bench judgement
            neck.cork-sand_mm | 0.3 | 0 | mm | 0 | 2 | taken off a neck cork by sanding it to its mouthpiece | bench judgement
            leak.pressure_kPa | 1 | 0 | kPa | 0.1 | 5 | pressure at which a total leak is read | bench judgement
            leak.total_mL_per_s | 2 | 0 | mL/s | 0 | 100 | total leak of a whole horn that may stay | bench judgement
            spares.share | 0.1 | 0 |  | 0 | 1 | pads ordered beyond need, as a share, at least one of the commonest | bench judgement
            hinge.tube-length_mm | 30 | 10 | mm | 5 | 400 | length of a hinge tube nobody has measured | bench judgement
            u.zero-share | 0.5 | 0 |  | 0 | 1 | share of an instrument's uncertainty that is its own zero and stays through repeats | bench judgement
            u.caliper_mm | 0.05 | 0 | mm | 0.001 | 2 | one standard uncertainty of a caliper on a cup or hole | bench judgement
            u.depth-rod_mm | 0.1 | 0 | mm | 0.001 | 2 | one standard uncertainty of a depth rod | bench judgement
            u.rule_mm | 0.5 | 0 | mm | 0.001 | 2 | one standard uncertainty of a rule held to a hinge | bench judgement
            u.micrometer_mm | 0.005 | 0 | mm | 0.0005 | 0.1 | one standard uncertainty of a micrometer on a tenon | bench judgement
            u.wedge_mm | 0.2 | 0 | mm | 0.001 | 2 | one standard uncertainty of a wedge gauge at the front edge | bench judgement
            u.feeler_mm | 0.02 | 0 | mm | 0.001 | 2 | one standard uncertainty of a feeler | bench judgement
            u.thickness-gauge_mm | 0.01 | 0 | mm | 0.001 | 1 | one standard uncertainty of a thickness gauge or dial on cork, felt or a pad | bench judgement
            u.thin-leaf_mm | 0.01 | 0 | mm | 0.001 | 2 | one standard uncertainty of a thin leaf under a cup, by its drag | bench judgement
            u.shim_mm | 0.01 | 0 | mm | 0.0005 | 0.2 | one standard uncertainty of the thickness of a trial shim | bench judgement
            u.other_mm | 0.2 | 0 | mm | 0.001 | 2 | one standard uncertainty of any other instrument | bench judgement
            u.force-gauge_N | 0.08 | 0 | N | 0.001 | 1 | one standard uncertainty of a force gauge at a touch | bench judgement
            u.balance_N | 0.03 | 0 | N | 0.001 | 1 | one standard uncertainty of a balance pressed through a touch | bench judgement
            u.other_N | 0.15 | 0 | N | 0.001 | 2 | one standard uncertainty of any other way to weigh a touch | bench judgement
            u.leak-gauge_mL_per_s | 0.2 | 0 | mL/s | 0.001 | 20 | one standard uncertainty of a leak gauge | bench judgement
            u.other_mL_per_s | 0.5 | 0 | mL/s | 0.001 | 20 | one standard uncertainty of any other way to read a leak | bench judgement
            material.natural-cork.modulus_MPa | 15 | 6 | MPa | 0.1 | 200 | natural cork: pressure at full strain in pressure = this x strain^exponent; Gibson, Easterling and Ashby, The structure and mechanics of cork, 1981 | from memory
            material.natural-cork.exponent | 1 | 0.05 |  | 0.5 | 6 | natural cork: exponent of the strain in that law; straight up to a strain of 5 in 100: Anjos, Pereira and Rosa, 2008 | published
            material.natural-cork.restitution | 0.4 | 0.2 |  | 0.02 | 0.98 | natural cork: share of its speed a foot gets back at 0.3 m/s, arm and hinge with it; the material alone 0.65 to 0.86, reckoned from its loss factor | bench judgement
            material.natural-cork.density_kg_m3 | 160 | 20 | kg/m³ | 30 | 5000 | natural cork: weight for its volume; Anjos, Pereira and Rosa, Effect of quality, porosity and density on the compression properties of cork, 2008 | published
            material.cork-rubber-composite.modulus_MPa | 6 | 3 | MPa | 0.1 | 200 | cork-rubber composite: pressure at full strain in pressure = this x strain^exponent | bench judgement
            material.cork-rubber-composite.exponent | 1 | 0.1 |  | 0.5 | 6 | cork-rubber composite: exponent of the strain in that law | bench judgement
            material.cork-rubber-composite.restitution | 0.35 | 0.15 |  | 0.02 | 0.98 | cork-rubber composite: share of its speed a foot gets back at 0.3 m/s, arm and hinge with it | bench judgement
            material.cork-rubber-composite.density_kg_m3 | 700 | 150 | kg/m³ | 30 | 5000 | cork-rubber composite: weight for its volume | bench judgement
            material.woven-wool-felt.modulus_MPa | 2 | 1 | MPa | 0.1 | 200 | woven wool felt: pressure at full strain in pressure = this x strain^exponent | bench judgement
            material.woven-wool-felt.exponent | 2 | 0.4 |  | 0.5 | 6 | woven wool felt: exponent of the strain in that law; felts of piano hammers, which are harder, 2.1 to 5: Boutillon, 1988 | bench judgement
            material.woven-wool-felt.restitution | 0.25 | 0.12 |  | 0.02 | 0.98 | woven wool felt: share of its speed a foot gets back at 0.3 m/s, arm and hinge with it | bench judgement
            material.woven-wool-felt.density_kg_m3 | 181 | 20 | kg/m³ | 30 | 5000 | woven wool felt: weight for its volume; class 9R1 of ASTM D2475 | published
            material.dense-wool-felt.modulus_MPa | 6 | 3 | MPa | 0.1 | 200 | dense wool felt: pressure at full strain in pressure = this x strain^exponent | bench judgement
            material.dense-wool-felt.exponent | 2 | 0.4 |  | 0.5 | 6 | dense wool felt: exponent of the strain in that law | bench judgement
            material.dense-wool-felt.restitution | 0.3 | 0.12 |  | 0.02 | 0.98 | dense wool felt: share of its speed a foot gets back at 0.3 m/s, arm and hinge with it | bench judgement
            material.dense-wool-felt.density_kg_m3 | 342 | 20 | kg/m³ | 30 | 5000 | dense wool felt: weight for its volume; class 16R1 of ASTM D2475 | published
            material.synthetic-felt.modulus_MPa | 8 | 4 | MPa | 0.1 | 200 | synthetic felt: pressure at full strain in pressure = this x strain^exponent | bench judgement
            material.synthetic-felt.exponent | 1.6 | 0.3 |  | 0.5 | 6 | synthetic felt: exponent of the strain in that law | bench judgement
            material.synthetic-felt.restitution | 0.35 | 0.15 |  | 0.02 | 0.98 | synthetic felt: share of its speed a foot gets back at 0.3 m/s, arm and hinge with it | bench judgement
            material.synthetic-felt.density_kg_m3 | 300 | 100 | kg/m³ | 30 | 5000 | synthetic felt: weight for its volume | bench judgement
            material.leather.modulus_MPa | 10 | 5 | MPa | 0.1 | 200 | leather: pressure at full strain in pressure = this x strain^exponent | bench judgement
            material.leather.exponent | 1.5 | 0.3 |  | 0.5 | 6 | leather: exponent of the strain in that law | bench judgement
            material.leather.restitution | 0.3 | 0.12 |  | 0.02 | 0.98 | leather: share of its speed a foot gets back at 0.3 m/s, arm and hinge with it | bench judgement
            material.leather.density_kg_m3 | 800 | 150 | kg/m³ | 30 | 5000 | leather: weight for its volume | bench judgement
            material.PTFE.modulus_MPa | 500 | 100 | MPa | 10 | 2000 | PTFE: pressure at full strain in pressure = this x strain^exponent; handbooks of plastics | from memory
            material.PTFE.exponent | 1 | 0.05 |  | 0.5 | 6 | PTFE: exponent of the strain in that law | from memory
            material.PTFE.restitution | 0.6 | 0.15 |  | 0.02 | 0.98 | PTFE: share of its speed a foot gets back at 0.3 m/s, arm and hinge with it | bench judgement
            material.PTFE.density_kg_m3 | 2180 | 30 | kg/m³ | 30 | 5000 | PTFE: weight for its volume; handbooks of plastics | from memory
            material.unknown.modulus_MPa | 8 | 6 | MPa | 0.1 | 200 | unknown: pressure at full strain in pressure = this x strain^exponent | bench judgement
            material.unknown.exponent | 1.5 | 0.4 |  | 0.5 | 6 | unknown: exponent of the strain in that law | bench judgement
            material.unknown.restitution | 0.35 | 0.18 |  | 0.02 | 0.98 | unknown: share of its speed a foot gets back at 0.3 m/s, arm and hinge with it | bench judgement
            material.unknown.density_kg_m3 | 400 | 250 | kg/m³ | 30 | 5000 | unknown: weight for its volume | bench judgement
            settling.natural-cork | 0.065 | 0.02 |  | 0 | 0.6 | share of its thickness natural cork loses in the first weeks of play | common practice
            settling.cork-rubber-composite | 0.035 | 0.009 |  | 0 | 0.6 | share of its thickness cork-rubber composite loses in the first weeks of play | common practice
            settling.woven-wool-felt | 0.175 | 0.045 |  | 0 | 0.6 | share of its thickness woven wool felt loses in the first weeks of play | common practice
            settling.dense-wool-felt | 0.085 | 0.02 |  | 0 | 0.6 | share of its thickness dense wool felt loses in the first weeks of play | common practice
            settling.synthetic-felt | 0.025 | 0.009 |  | 0 | 0.6 | share of its thickness synthetic felt loses in the first weeks of play | common practice
            settling.leather | 0.075 | 0.015 |  | 0 | 0.6 | share of its thickness leather loses in the first weeks of play | common practice
            settling.PTFE | 0.0 | 0.002 |  | 0 | 0.6 | share of its thickness PTFE loses in the first weeks of play | common practice
            settling.unknown | 0.08 | 0.05 |  | 0 | 0.6 | share of its thickness unknown loses in the first weeks of play | common practice
            pad-class.soft.seat_MPa | 0.12 | 0.05 | MPa | 0.01 | 5 | soft pad, its skin: force for each mm of rim and each mm it gives | bench judgement
            pad-class.soft.felt_MPa | 0.36 | 0.2 | MPa | 0.01 | 20 | soft pad, once the felt has taken over: the same | bench judgement
            pad-class.soft.felt-from_mm | 0.1 | 0.03 | mm | 0.005 | 1 | soft pad: how far the skin gives before the felt takes over | bench judgement
            pad-class.medium.seat_MPa | 0.2 | 0.07 | MPa | 0.01 | 5 | medium pad, its skin: force for each mm of rim and each mm it gives | bench judgement
            pad-class.medium.felt_MPa | 0.6 | 0.3 | MPa | 0.01 | 20 | medium pad, once the felt has taken over: the same | bench judgement
            pad-class.medium.felt-from_mm | 0.1 | 0.03 | mm | 0.005 | 1 | medium pad: how far the skin gives before the felt takes over | bench judgement
            pad-class.firm.seat_MPa | 0.35 | 0.12 | MPa | 0.01 | 5 | firm pad, its skin: force for each mm of rim and each mm it gives | bench judgement
            pad-class.firm.felt_MPa | 1.05 | 0.5 | MPa | 0.01 | 20 | firm pad, once the felt has taken over: the same | bench judgement
            pad-class.firm.felt-from_mm | 0.1 | 0.03 | mm | 0.005 | 1 | firm pad: how far the skin gives before the felt takes over | bench judgement
            settling.days_d | 12 | 6 | d | 1 | 120 | days in which two thirds of the settling are over | bench judgement
            rest.least_h | 24 | 0 | h | 1 | 240 | shortest rest between regulating and the second round | bench judgement
            rest.most_h | 72 | 0 | h | 1 | 480 | longest rest before the second round is due | bench judgement
            settling.recheck_d | 30 | 0 | d | 3 | 180 | days after the corks went on when heights and links are looked at again | bench judgement
            bounce.foot-area_mm2 | 24 | 8 | mm² | 1 | 400 | area a key foot lands on | bench judgement
            bounce.guard-area_mm2 | 80 | 25 | mm² | 1 | 900 | area a cup lands on under a guard | bench judgement
            bounce.arm-share | 0.5 | 0.25 |  | 0 | 3 | weight of a key's arm as a share of its cup's | bench judgement
            bounce.friction-share | 0.08 | 0.05 |  | 0 | 0.9 | friction at the hinge as a share of the spring's torque | bench judgement
            bounce.speed_m_per_s | 0.3 | 0 | m/s | 0.01 | 5 | speed at which the restitution of a material is stated | bench judgement
            bounce.seen_mm | 0.2 | 0 | mm | 0.02 | 2 | smallest rebound at the cup whose click an ear still counts | bench judgement
            height.alto.low-b-flat.least_mm | 8.5 | 0 | mm | 0 | 25 | alto: lowest usual height of low b flat at the front edge | common practice
            height.alto.low-b-flat.most_mm | 11 | 0 | mm | 0 | 25 | alto: greatest usual height of low b flat at the front edge | common practice
            height.alto.low-b.least_mm | 8.5 | 0 | mm | 0 | 25 | alto: lowest usual height of low b at the front edge | common practice
            height.alto.low-b.most_mm | 10.5 | 0 | mm | 0 | 25 | alto: greatest usual height of low b at the front edge | common practice
            height.alto.low-c-sharp.least_mm | 8 | 0 | mm | 0 | 25 | alto: lowest usual height of low c sharp at the front edge | common practice
            height.alto.low-c-sharp.most_mm | 10.5 | 0 | mm | 0 | 25 | alto: greatest usual height of low c sharp at the front edge | common practice
            height.alto.low-c.least_mm | 7.5 | 0 | mm | 0 | 25 | alto: lowest usual height of low c at the front edge | common practice
            height.alto.low-c.most_mm | 10 | 0 | mm | 0 | 25 | alto: greatest usual height of low c at the front edge | common practice
            height.alto.low-e-flat.least_mm | 6 | 0 | mm | 0 | 25 | alto: lowest usual height of low e flat at the front edge | common practice
            height.alto.low-e-flat.most_mm | 9 | 0 | mm | 0 | 25 | alto: greatest usual height of low e flat at the front edge | common practice
            height.alto.d.least_mm | 6.5 | 0 | mm | 0 | 25 | alto: lowest usual height of d at the front edge | common practice
            height.alto.d.most_mm | 8.5 | 0 | mm | 0 | 25 | alto: greatest usual height of d at the front edge | common practice
            height.alto.e.least_mm | 6 | 0 | mm | 0 | 25 | alto: lowest usual height of e at the front edge | common practice
            height.alto.e.most_mm | 8 | 0 | mm | 0 | 25 | alto: greatest usual height of e at the front edge | common practice
            height.alto.f.least_mm | 5.5 | 0 | mm | 0 | 25 | alto: lowest usual height of f at the front edge | common practice
            height.alto.f.most_mm | 7.5 | 0 | mm | 0 | 25 | alto: greatest usual height of f at the front edge | common practice
            height.alto.f-sharp.least_mm | 5 | 0 | mm | 0 | 25 | alto: lowest usual height of f sharp at the front edge | common practice
            height.alto.f-sharp.most_mm | 7 | 0 | mm | 0 | 25 | alto: greatest usual height of f sharp at the front edge | common practice
            height.alto.g-sharp.least_mm | 4 | 0 | mm | 0 | 25 | alto: lowest usual height of g sharp at the front edge | common practice
            height.alto.g-sharp.most_mm | 6.5 | 0 | mm | 0 | 25 | alto: greatest usual height of g sharp at the front edge | common practice
            height.alto.g.least_mm | 4.5 | 0 | mm | 0 | 25 | alto: lowest usual height of g at the front edge | common practice
            height.alto.g.most_mm | 6.5 | 0 | mm | 0 | 25 | alto: greatest usual height of g at the front edge | common practice
            height.alto.a.least_mm | 4 | 0 | mm | 0 | 25 | alto: lowest usual height of a at the front edge | common practice
            height.alto.a.most_mm | 6 | 0 | mm | 0 | 25 | alto: greatest usual height of a at the front edge | common practice
            height.alto.bis.least_mm | 3 | 0 | mm | 0 | 25 | alto: lowest usual height of bis at the front edge | common practice
            height.alto.bis.most_mm | 5 | 0 | mm | 0 | 25 | alto: greatest usual height of bis at the front edge | common practice
            height.alto.b.least_mm | 3.5 | 0 | mm | 0 | 25 | alto: lowest usual height of b at the front edge | common practice
            height.alto.b.most_mm | 5.5 | 0 | mm | 0 | 25 | alto: greatest usual height of b at the front edge | common practice
            height.alto.c-vent.least_mm | 3 | 0 | mm | 0 | 25 | alto: lowest usual height of c vent at the front edge | common practice
            height.alto.c-vent.most_mm | 4.5 | 0 | mm | 0 | 25 | alto: greatest usual height of c vent at the front edge | common practice
            height.alto.side-b-flat.least_mm | 4 | 0 | mm | 0 | 25 | alto: lowest usual height of side b flat at the front edge | common practice
            height.alto.side-b-flat.most_mm | 6 | 0 | mm | 0 | 25 | alto: greatest usual height of side b flat at the front edge | common practice
            height.alto.side-c.least_mm | 4 | 0 | mm | 0 | 25 | alto: lowest usual height of side c at the front edge | common practice
            height.alto.side-c.most_mm | 6 | 0 | mm | 0 | 25 | alto: greatest usual height of side c at the front edge | common practice
            height.alto.side-f-sharp.least_mm | 3.5 | 0 | mm | 0 | 25 | alto: lowest usual height of side f sharp at the front edge | common practice
            height.alto.side-f-sharp.most_mm | 5.5 | 0 | mm | 0 | 25 | alto: greatest usual height of side f sharp at the front edge | common practice
            height.alto.palm-d.least_mm | 4.5 | 0 | mm | 0 | 25 | alto: lowest usual height of palm d at the front edge | common practice
            height.alto.palm-d.most_mm | 7 | 0 | mm | 0 | 25 | alto: greatest usual height of palm d at the front edge | common practice
            height.alto.palm-e-flat.least_mm | 4.5 | 0 | mm | 0 | 25 | alto: lowest usual height of palm e flat at the front edge | common practice
            height.alto.palm-e-flat.most_mm | 7 | 0 | mm | 0 | 25 | alto: greatest usual height of palm e flat at the front edge | common practice
            height.alto.high-e.least_mm | 4.5 | 0 | mm | 0 | 25 | alto: lowest usual height of high e at the front edge | common practice
            height.alto.high-e.most_mm | 7 | 0 | mm | 0 | 25 | alto: greatest usual height of high e at the front edge | common practice
            height.alto.palm-f.least_mm | 4.5 | 0 | mm | 0 | 25 | alto: lowest usual height of palm f at the front edge | common practice
            height.alto.palm-f.most_mm | 7 | 0 | mm | 0 | 25 | alto: greatest usual height of palm f at the front edge | common practice
            height.alto.high-f-sharp.least_mm | 4 | 0 | mm | 0 | 25 | alto: lowest usual height of high f sharp at the front edge | common practice
            height.alto.high-f-sharp.most_mm | 6 | 0 | mm | 0 | 25 | alto: greatest usual height of high f sharp at the front edge | common practice
            height.alto.body-octave.least_mm | 1 | 0 | mm | 0 | 25 | alto: lowest usual height of body octave at the front edge | common practice
            height.alto.body-octave.most_mm | 2.5 | 0 | mm | 0 | 25 | alto: greatest usual height of body octave at the front edge | common practice
            height.alto.neck-octave.least_mm | 1 | 0 | mm | 0 | 25 | alto: lowest usual height of neck octave at the front edge | common practice
            height.alto.neck-octave.most_mm | 2.5 | 0 | mm | 0 | 25 | alto: greatest usual height of neck octave at the front edge | common practice
            height.tenor.low-b-flat.least_mm | 10 | 0 | mm | 0 | 25 | tenor: lowest usual height of low b flat at the front edge | common practice
            height.tenor.low-b-flat.most_mm | 13.5 | 0 | mm | 0 | 25 | tenor: greatest usual height of low b flat at the front edge | common practice
            height.tenor.low-b.least_mm | 10 | 0 | mm | 0 | 25 | tenor: lowest usual height of low b at the front edge | common practice
            height.tenor.low-b.most_mm | 13 | 0 | mm | 0 | 25 | tenor: greatest usual height of low b at the front edge | common practice
            height.tenor.low-c-sharp.least_mm | 9 | 0 | mm | 0 | 25 | tenor: lowest usual height of low c sharp at the front edge | common practice
            height.tenor.low-c-sharp.most_mm | 12 | 0 | mm | 0 | 25 | tenor: greatest usual height of low c sharp at the front edge | common practice
            height.tenor.low-c.least_mm | 9 | 0 | mm | 0 | 25 | tenor: lowest usual height of low c at the front edge | common practice
            height.tenor.low-c.most_mm | 11.5 | 0 | mm | 0 | 25 | tenor: greatest usual height of low c at the front edge | common practice
            height.tenor.low-e-flat.least_mm | 7 | 0 | mm | 0 | 25 | tenor: lowest usual height of low e flat at the front edge | common practice
            height.tenor.low-e-flat.most_mm | 10 | 0 | mm | 0 | 25 | tenor: greatest usual height of low e flat at the front edge | common practice
            height.tenor.d.least_mm | 7.5 | 0 | mm | 0 | 25 | tenor: lowest usual height of d at the front edge | common practice
            height.tenor.d.most_mm | 10 | 0 | mm | 0 | 25 | tenor: greatest usual height of d at the front edge | common practice
            height.tenor.e.least_mm | 7 | 0 | mm | 0 | 25 | tenor: lowest usual height of e at the front edge | common practice
            height.tenor.e.most_mm | 9.5 | 0 | mm | 0 | 25 | tenor: greatest usual height of e at the front edge | common practice
            height.tenor.f.least_mm | 6.5 | 0 | mm | 0 | 25 | tenor: lowest usual height of f at the front edge | common practice
            height.tenor.f.most_mm | 9 | 0 | mm | 0 | 25 | tenor: greatest usual height of f at the front edge | common practice
            height.tenor.f-sharp.least_mm | 6 | 0 | mm | 0 | 25 | tenor: lowest usual height of f sharp at the front edge | common practice
            height.tenor.f-sharp.most_mm | 8 | 0 | mm | 0 | 25 | tenor: greatest usual height of f sharp at the front edge | common practice
            height.tenor.g-sharp.least_mm | 5 | 0 | mm | 0 | 25 | tenor: lowest usual height of g sharp at the front edge | common practice
            height.tenor.g-sharp.most_mm | 7.5 | 0 | mm | 0 | 25 | tenor: greatest usual height of g sharp at the front edge | common practice
            height.tenor.g.least_mm | 5.5 | 0 | mm | 0 | 25 | tenor: lowest usual height of g at the front edge | common practice
            height.tenor.g.most_mm | 7.5 | 0 | mm | 0 | 25 | tenor: greatest usual height of g at the front edge | common practice
            height.tenor.a.least_mm | 5 | 0 | mm | 0 | 25 | tenor: lowest usual height of a at the front edge | common practice
            height.tenor.a.most_mm | 6.5 | 0 | mm | 0 | 25 | tenor: greatest usual height of a at the front edge | common practice
            height.tenor.bis.least_mm | 3.5 | 0 | mm | 0 | 25 | tenor: lowest usual height of bis at the front edge | common practice
            height.tenor.bis.most_mm | 5.5 | 0 | mm | 0 | 25 | tenor: greatest usual height of bis at the front edge | common practice
            height.tenor.b.least_mm | 4 | 0 | mm | 0 | 25 | tenor: lowest usual height of b at the front edge | common practice
            height.tenor.b.most_mm | 6 | 0 | mm | 0 | 25 | tenor: greatest usual height of b at the front edge | common practice
            height.tenor.c-vent.least_mm | 3.5 | 0 | mm | 0 | 25 | tenor: lowest usual height of c vent at the front edge | common practice
            height.tenor.c-vent.most_mm | 5 | 0 | mm | 0 | 25 | tenor: greatest usual height of c vent at the front edge | common practice
            height.tenor.side-b-flat.least_mm | 4.5 | 0 | mm | 0 | 25 | tenor: lowest usual height of side b flat at the front edge | common practice
            height.tenor.side-b-flat.most_mm | 7 | 0 | mm | 0 | 25 | tenor: greatest usual height of side b flat at the front edge | common practice
            height.tenor.side-c.least_mm | 4.5 | 0 | mm | 0 | 25 | tenor: lowest usual height of side c at the front edge | common practice
            height.tenor.side-c.most_mm | 7 | 0 | mm | 0 | 25 | tenor: greatest usual height of side c at the front edge | common practice
            height.tenor.side-f-sharp.least_mm | 4 | 0 | mm | 0 | 25 | tenor: lowest usual height of side f sharp at the front edge | common practice
            height.tenor.side-f-sharp.most_mm | 6.5 | 0 | mm | 0 | 25 | tenor: greatest usual height of side f sharp at the front edge | common practice
            height.tenor.palm-d.least_mm | 5 | 0 | mm | 0 | 25 | tenor: lowest usual height of palm d at the front edge | common practice
            height.tenor.palm-d.most_mm | 8 | 0 | mm | 0 | 25 | tenor: greatest usual height of palm d at the front edge | common practice
            height.tenor.palm-e-flat.least_mm | 5 | 0 | mm | 0 | 25 | tenor: lowest usual height of palm e flat at the front edge | common practice
            height.tenor.palm-e-flat.most_mm | 8 | 0 | mm | 0 | 25 | tenor: greatest usual height of palm e flat at the front edge | common practice
            height.tenor.high-e.least_mm | 5 | 0 | mm | 0 | 25 | tenor: lowest usual height of high e at the front edge | common practice
            height.tenor.high-e.most_mm | 8 | 0 | mm | 0 | 25 | tenor: greatest usual height of high e at the front edge | common practice
            height.tenor.palm-f.least_mm | 5 | 0 | mm | 0 | 25 | tenor: lowest usual height of palm f at the front edge | common practice
            height.tenor.palm-f.most_mm | 8 | 0 | mm | 0 | 25 | tenor: greatest usual height of palm f at the front edge | common practice
            height.tenor.high-f-sharp.least_mm | 4.5 | 0 | mm | 0 | 25 | tenor: lowest usual height of high f sharp at the front edge | common practice
            height.tenor.high-f-sharp.most_mm | 7 | 0 | mm | 0 | 25 | tenor: greatest usual height of high f sharp at the front edge | common practice
            height.tenor.body-octave.least_mm | 1 | 0 | mm | 0 | 25 | tenor: lowest usual height of body octave at the front edge | common practice
            height.tenor.body-octave.most_mm | 2.5 | 0 | mm | 0 | 25 | tenor: greatest usual height of body octave at the front edge | common practice
            height.tenor.neck-octave.least_mm | 1 | 0 | mm | 0 | 25 | tenor: lowest usual height of neck octave at the front edge | common practice
            height.tenor.neck-octave.most_mm | 2.5 | 0 | mm | 0 | 25 | tenor: greatest usual height of neck octave at the front edge | common practice
            hours.intake.least_h | 0.7 | 0 | h | 0 | 60 | fewest hours on an alto for: identify, photograph, play, describe | common practice
            hours.intake.most_h | 1.5 | 0 | h | 0 | 60 | most hours on an alto for: identify, photograph, play, describe | common practice
            hours.measure.least_h | 0.7 | 0 | h | 0 | 60 | fewest hours on an alto for: measure before strip-down | common practice
            hours.measure.most_h | 1.5 | 0 | h | 0 | 60 | most hours on an alto for: measure before strip-down | common practice
            hours.strip.least_h | 0.7 | 0 | h | 0 | 60 | fewest hours on an alto for: strip down, bag and label | common practice
            hours.strip.most_h | 1.2 | 0 | h | 0 | 60 | most hours on an alto for: strip down, bag and label | common practice
            hours.body.least_h | 1 | 0 | h | 0 | 60 | fewest hours on an alto for: straighten, dents, braces, solder, neck | common practice
            hours.body.most_h | 8 | 0 | h | 0 | 60 | most hours on an alto for: straighten, dents, braces, solder, neck | common practice
            hours.clean.least_h | 1 | 0 | h | 0 | 60 | fewest hours on an alto for: clean | common practice
            hours.clean.most_h | 2 | 0 | h | 0 | 60 | most hours on an alto for: clean | common practice
            hours.springs.least_h | 0.5 | 0 | h | 0 | 60 | fewest hours on an alto for: inspect and replace springs | common practice
            hours.springs.most_h | 2 | 0 | h | 0 | 60 | most hours on an alto for: inspect and replace springs | common practice
            hours.fit.least_h | 3 | 0 | h | 0 | 60 | fewest hours on an alto for: fit keys: rods, posts, pivots | common practice
            hours.fit.most_h | 8 | 0 | h | 0 | 60 | most hours on an alto for: fit keys: rods, posts, pivots | common practice
            hours.level.least_h | 1.5 | 0 | h | 0 | 60 | fewest hours on an alto for: level holes and cups | common practice
            hours.level.most_h | 4 | 0 | h | 0 | 60 | most hours on an alto for: level holes and cups | common practice
            hours.dry-fit.least_h | 1 | 0 | h | 0 | 60 | fewest hours on an alto for: dry fit: cup orientation, arms | common practice
            hours.dry-fit.most_h | 3 | 0 | h | 0 | 60 | most hours on an alto for: dry fit: cup orientation, arms | common practice
            hours.corks.least_h | 2 | 0 | h | 0 | 60 | fewest hours on an alto for: corks and felts | common practice
            hours.corks.most_h | 4 | 0 | h | 0 | 60 | most hours on an alto for: corks and felts | common practice
            hours.pads.least_h | 4 | 0 | h | 0 | 60 | fewest hours on an alto for: pads | common practice
            hours.pads.most_h | 8 | 0 | h | 0 | 60 | most hours on an alto for: pads | common practice
            hours.regulate.least_h | 2 | 0 | h | 0 | 60 | fewest hours on an alto for: regulation, heights, springs | common practice
            hours.regulate.most_h | 5 | 0 | h | 0 | 60 | most hours on an alto for: regulation, heights, springs | common practice
            hours.play-test.least_h | 1 | 0 | h | 0 | 60 | fewest hours on an alto for: play test and a second look | common practice
            hours.play-test.most_h | 3 | 0 | h | 0 | 60 | most hours on an alto for: play test and a second look | common practice
            hours.finish.least_h | 0.5 | 0 | h | 0 | 60 | fewest hours on an alto for: polish and pack | common practice
            hours.finish.most_h | 2 | 0 | h | 0 | 60 | most hours on an alto for: polish and pack | common practice
            hours.hand-over.least_h | 0.5 | 0 | h | 0 | 60 | fewest hours on an alto for: hand over, report | common practice
            hours.hand-over.most_h | 0.5 | 0 | h | 0 | 60 | most hours on an alto for: hand over, report | common practice
            hours.tenor-share | 1.15 | 0 |  | 0.5 | 2 | a tenor takes this share of the hours of an alto | common practice
            price.hour | 60 | 0 | money/h | 0 | 1000 | what an hour at the bench costs the owner | demo
            price.reserve-share | 0.1 | 0 |  | 0 | 1 | kept in reserve for what only shows after strip-down | bench judgement
            price.pad | 3 | 0 | money | 0 | 100 | a pad without a price on the shelf | demo
            price.piece | 1 | 0 | money | 0 | 100 | a piece of cork or felt without a price on the shelf | demo
            """;

    private ShippedRules() {}

    static Map<String, Rule> read() {
        Map<String, Rule> rules = new LinkedHashMap<>();
        TABLE.lines().map(ShippedRules::rule).forEach(rule -> rules.put(rule.id(), rule));
        return rules;
    }

    private static Rule rule(String line) {
        String[] cells = line.split(" \\| ", -1);
        return new Rule(
                cells[0],
                Double.parseDouble(cells[1]),
                Double.parseDouble(cells[2]),
                cells[3],
                Double.parseDouble(cells[4]),
                Double.parseDouble(cells[5]),
                cells[6],
                mark(cells[7]),
                true);
    }

    private static Mark mark(String word) {
        for (Mark mark : Mark.values()) {
            if (mark.word().equals(word)) {
                return mark;
            }
        }
        throw new IllegalArgumentException("no mark is called " + word);
    }
}
