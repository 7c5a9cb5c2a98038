package hornwright.desk.use;

import hornwright.bench.job.ArchiveFold;
import hornwright.bench.job.Archives;
import hornwright.bench.job.Edit;
import hornwright.bench.job.History;
import hornwright.bench.job.House;
import hornwright.bench.job.Job;
import hornwright.bench.job.JobFold;
import hornwright.bench.job.RulesFold;
import hornwright.bench.job.StockFold;
import hornwright.bench.job.StreamName;
import hornwright.bench.stock.Stock;
import hornwright.desk.journal.Cards;
import hornwright.desk.journal.Draft;
import hornwright.desk.journal.Entry;
import hornwright.desk.journal.ShopData;
import hornwright.desk.json.BadInput;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * One shop, open: every stream in memory as the sum of its edits, and the one door through which edits are kept. Safe to
 * use from several threads.
 */
public final class Shop implements AutoCloseable {
    private final ShopData data;
    private final List<String> unknown;
    private final Memory<House> house;
    private final Memory<Stock> stock;
    private final Memory<Archives> archive;
    private final Watch watch = new Watch();
    private final Map<String, Memory<Optional<Job>>> jobs = new ConcurrentHashMap<>();

    private Shop(ShopData data) {
        this.data = data;
        this.unknown = data.unknownKinds();
        this.house = new Memory<>(data.journal(), StreamName.RULES, new RulesFold());
        this.stock = new Memory<>(data.journal(), StreamName.STOCK, new StockFold());
        this.archive = new Memory<>(data.journal(), StreamName.ARCHIVE, new ArchiveFold());
    }

    /** The shop kept in this data, which is closed with it. */
    public static Shop over(ShopData data) {
        Shop shop = new Shop(data);
        if (shop.unknown.isEmpty()) {
            new RebuildCards(shop).whenBehind();
        }
        return shop;
    }

    /** The shop as it stands in this data, not to be written to: another program may be at work on it. */
    public static Shop lookInto(ShopData data) {
        return new Shop(data);
    }

    /** Sentences why nothing may be written here, when a newer program has been at work; empty when all is well. */
    public List<String> readOnlyBecause() {
        return unknown;
    }

    public History<House> house() {
        return house.now();
    }

    public History<Stock> stock() {
        return stock.now();
    }

    public History<Archives> archive() {
        return archive.now();
    }

    /** The history of a job; one that was never opened has none and its state is empty. */
    public History<Optional<Job>> job(String id) {
        return memory(id).now();
    }

    /** The job, or {@link BadInput} when there is none of that id. */
    public Job jobNow(String id) {
        return opened(id).state().orElseThrow(() -> none(id));
    }

    /** The history of a job that there is, else {@link BadInput}. */
    History<Optional<Job>> opened(String id) {
        if (!id.matches("[a-z0-9][a-z0-9-]{0,62}")) {
            throw none(id);
        }
        History<Optional<Job>> history = job(id);
        if (history.state().isEmpty()) {
            throw none(id);
        }
        return history;
    }

    History<?> history(StreamName stream) {
        if (stream.isJob()) {
            return job(stream.jobId());
        }
        return stream.equals(StreamName.STOCK) ? stock() : stream.equals(StreamName.ARCHIVE) ? archive() : house();
    }

    Saved save(StreamName stream, Form form, Edit... edits) {
        if (form.expectedSeq() > history(stream).seq()) {
            return new Saved.Refused(
                    "This page knows of edits that are not here, perhaps from before a restore; open it again.");
        }
        List<Draft> drafts = new ArrayList<>();
        for (Edit edit : edits) {
            drafts.add(new Draft(stream, form.expectedSeq() + drafts.size(), edit));
        }
        return save(drafts, form);
    }

    Saved saveJob(String id, Form form, Edit... edits) {
        opened(id);
        return save(StreamName.ofJob(id), form, edits);
    }

    /** Keeps all or none; see {@link Saved}. */
    Saved save(List<Draft> drafts, Form form) {
        Saved saved = new Save(this, form).all(drafts);
        if (saved instanceof Saved.Kept) {
            watch.saved();
        }
        return saved;
    }

    /** How far everything has come that a page of this horn rests on: its own edits, rules, stock and archive. */
    public long come(String id) {
        return opened(id).seq() + data.journal().lastOfShop();
    }

    /** How far the edits of the whole shop have come. */
    public long come() {
        return data.journal().head();
    }

    /** Waits until what a page of this horn rests on has come further, or as long as asked; gives how far it has come. */
    public long awaitBeyond(String id, long come, Duration most) throws InterruptedException {
        return watch.until(() -> come(id), come, most);
    }

    /** The same for the whole shop. */
    public long awaitBeyond(long come, Duration most) throws InterruptedException {
        return watch.until(this::come, come, most);
    }

    /** Tells a second program that wants this data where the pages are. */
    public void tellAddress(String address) {
        if (data.folder() != null) {
            data.folder().tellAddress(address);
        }
    }

    ShopData data() {
        return data;
    }

    /** The cards of the jobs these entries belong to, as they will be after them. */
    List<Cards.Turned> cards(List<Entry> fresh) {
        return fresh.stream()
                .filter(entry -> entry.stream().isJob())
                .collect(java.util.stream.Collectors.groupingBy(
                        Entry::stream, java.util.LinkedHashMap::new, java.util.stream.Collectors.toList()))
                .entrySet()
                .stream()
                .map(entry -> {
                    String id = entry.getKey().jobId();
                    History<Optional<Job>> after = memory(id).after(entry.getValue());
                    return CardOfJob.turned(
                            id, after, entry.getValue().getLast().position());
                })
                .toList();
    }

    private Memory<Optional<Job>> memory(String id) {
        return jobs.computeIfAbsent(id, key -> new Memory<>(data.journal(), StreamName.ofJob(key), new JobFold(key)));
    }

    private static BadInput none(String id) {
        return new BadInput("", "there is no job \"" + id + "\"", "an id from the shelf, such as q-0001");
    }

    @Override
    public void close() {
        data.close();
    }
}
