package hornwright.desk.use;

import hornwright.bench.job.EvidenceBroughtIn.Brought;
import java.util.List;

/**
 * What one shop sends another: horns, looks and statements. No owner, no note and no job is among it.
 *
 * @param sender short and stable name of the sending shop's data, under which its items are known everywhere
 * @param name what the sender is called
 */
record SharedEvidence(String format, int version, String sender, String name, List<Brought> archives) {
    static final String FORMAT = "hornwright evidence";
    static final int VERSION = 1;

    SharedEvidence {
        archives = List.copyOf(archives);
    }
}
