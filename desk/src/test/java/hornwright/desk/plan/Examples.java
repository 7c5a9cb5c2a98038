package hornwright.desk.plan;

import hornwright.bench.plan.PlanInputs;
import hornwright.desk.house.Checkout;
import hornwright.desk.jobfile.JobFile;

/** The jobs the program ships as examples. */
final class Examples {
    private Examples() {}

    static PlanInputs job(String name) {
        return JobFile.read(text(name)).inputs();
    }

    static String text(String name) {
        return Checkout.text(Checkout.root()
                .resolve("desk/src/main/resources/hornwright/examples")
                .resolve(name + ".json"));
    }
}
