package hornwright.desk.use;

import hornwright.bench.job.Arrival;
import hornwright.bench.job.Job;
import hornwright.desk.journal.EditJson;
import hornwright.desk.journal.Hand;
import hornwright.desk.journal.Person;
import hornwright.desk.json.BadInput;
import hornwright.desk.json.Faults;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;

/** Reads an exported folder back as a job of this shop. All of it is checked before anything is kept; it is one edit. */
public record ImportJob(Shop shop) {
    /** The job as it stands now, under its id of this shop. */
    public Job from(Path folder, Hand hand) {
        Faults faults = new Faults();
        Job job = job(folder);
        Map<String, byte[]> pictures = pictures(folder, job, faults);
        Optional<Person> owner = owner(folder, job);
        faults.refuseIfAny();
        pictures.forEach((name, bytes) -> new KeepFile(shop).keep(bytes, JobFolder.mediaOf(name)));
        @Nullable String ownerId = owner.map(this::kept).orElse(job.arrival().owner());
        Saved saved = new OpenJob(shop)
                .bringIn(
                        Form.once(0, hand),
                        job.with(new Arrival(ownerId, job.arrival().complaint())));
        return switch (saved) {
            case Saved.Kept kept -> shop.jobNow(kept.stream().jobId());
            case Saved.Conflict conflict -> throw new IllegalStateException("a new job meets nobody");
            case Saved.Refused refused -> throw new IllegalStateException(refused.why());
        };
    }

    private static Job job(Path folder) {
        Path file = folder.resolve(JobFolder.JOB);
        if (!Files.isRegularFile(file)) {
            throw new BadInput(
                    "", "there is no " + JobFolder.JOB + " in " + folder, "a folder that export has written");
        }
        return read(file, Job.class);
    }

    private static <T> T read(Path file, Class<T> type) {
        try {
            T value = EditJson.mapper().readValue(Files.readString(file), type);
            EditJson.requireWhole(value);
            return value;
        } catch (JacksonException e) {
            String pointer = e.getPath().stream()
                    .map(step -> "/" + (step.getPropertyName() == null ? step.getIndex() : step.getPropertyName()))
                    .reduce("", String::concat);
            throw new BadInput(
                    pointer, file.getFileName() + ": " + e.getOriginalMessage(), "the file as export wrote it");
        } catch (hornwright.desk.journal.Unusable e) {
            throw new BadInput("", file.getFileName() + ": " + e.getMessage(), "the file as export wrote it");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The pictures the job names, found by what they are and not by what they are called. */
    private static Map<String, byte[]> pictures(Path folder, Job job, Faults faults) {
        Map<String, String> wanted = new HashMap<>(JobFolder.pictures(job));
        Map<String, byte[]> found = new HashMap<>();
        for (Path file : files(folder.resolve(JobFolder.PHOTOS))) {
            byte[] bytes = bytes(file);
            if (wanted.remove(KeepFile.nameOf(bytes)) != null) {
                found.put(String.valueOf(file.getFileName()), bytes);
            }
        }
        wanted.forEach((sha, shows) -> faults.add(
                "/photos",
                "the picture of " + shows + " is missing or changed",
                "the folder photos as export wrote it"));
        return found;
    }

    private static Optional<Person> owner(Path folder, Job job) {
        Path file = folder.resolve(JobFolder.OWNER);
        return job.arrival().owner() != null && Files.isRegularFile(file)
                ? Optional.of(read(file, Person.class))
                : Optional.empty();
    }

    /** The id under which this shop knows the person from now on: the same, unless somebody else has it here. */
    private String kept(Person owner) {
        KeepPerson people = new KeepPerson(shop);
        String id = owner.id();
        for (int i = 2; ; i++) {
            Optional<Person> known = people.find(id);
            Person mine = new Person(id, owner.name(), owner.address(), owner.telephone(), owner.email());
            if (known.isEmpty()) {
                people.put(mine);
                return id;
            }
            if (known.get().equals(mine)) {
                return id;
            }
            id = owner.id() + "-" + i;
        }
    }

    private static List<Path> files(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(Files::isRegularFile).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
