package hornwright.desk.web.feel;

import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.bounce.BounceChapter;
import hornwright.bench.plan.bounce.Bounced;
import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.OnBench;
import java.util.List;

/** Writes one key let go, once for each way it could be made. */
public final class TryRows {
    private final String horn;
    private final BounceChapter.Answer bounce;

    TryRows(String horn, BounceChapter.Answer bounce) {
        this.horn = horn;
        this.bounce = bounce;
    }

    /** Only what differs in the middle of the pad, what the maker fitted first. */
    public static List<LeverPage.Try> centres(String horn, BounceChapter.Answer bounce) {
        List<Bounced> centres = bounce.keys().stream()
                .filter(one -> !one.what().endsWith("under the foot"))
                .toList();
        return new TryRows(horn, new BounceChapter.Answer(centres, bounce.becauses())).all();
    }

    List<LeverPage.Try> all() {
        return bounce.keys().stream().map(this::tried).toList();
    }

    private LeverPage.Try tried(Bounced one) {
        double longest = bounce.keys().stream()
                .mapToDouble(each -> each.settled().value())
                .max()
                .orElse(100);
        return new LeverPage.Try(
                OnBench.capital(one.what()),
                one.period(),
                SettlingPath.of(one.trace(), 1.15 * longest / 1e3),
                FeelRows.state(one),
                figure("opens in", one.opening()),
                figure("comes back by", one.rebound()),
                figure("quiet after", one.settled()));
    }

    private Figure figure(String label, PlannedNumber number) {
        return Figure.of(horn, label, number);
    }
}
