package hornwright.desk.journal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

/**
 * A throw-away PostgreSQL, started once for the test program from the system's own package and stopped with it. Where
 * none is installed the tests fail with a sentence; they are never passed over in silence.
 */
public final class PostgresServer {
    private static final AtomicInteger COUNT = new AtomicInteger();

    private final Path folder;
    private final Path programs;
    private final int port;

    private static final class Holder {
        static final PostgresServer RUNNING = start();
    }

    private PostgresServer(Path folder, Path programs, int port) {
        this.folder = folder;
        this.programs = programs;
        this.port = port;
    }

    /** The address of a new, empty database. */
    public static String freshDatabase() {
        PostgresServer server = Holder.RUNNING;
        String name = "shop_" + COUNT.incrementAndGet();
        try (Connection connection = DriverManager.getConnection(server.url("postgres"));
                var statement = connection.createStatement()) {
            statement.execute("create database " + name);
        } catch (SQLException e) {
            throw new IllegalStateException("the test server does not answer", e);
        }
        return server.url(name);
    }

    private String url(String database) {
        return "jdbc:postgresql://127.0.0.1:%d/%s?user=postgres".formatted(port, database);
    }

    private static PostgresServer start() {
        try {
            Path folder = Files.createTempDirectory("postgres-for-tests");
            PostgresServer server = new PostgresServer(folder, programs(), freePort());
            if (isRoot()) {
                run(List.of("chown", "postgres:", folder.toString()));
            }
            server.as(
                    "initdb",
                    "-D",
                    server.data(),
                    "-A",
                    "trust",
                    "-U",
                    "postgres",
                    "--no-sync",
                    "-E",
                    "UTF8",
                    "--locale=C.UTF-8");
            Runtime.getRuntime().addShutdownHook(new Thread(server::stop));
            server.as(
                    "pg_ctl",
                    "-D",
                    server.data(),
                    "-w",
                    "-l",
                    folder.resolve("log").toString(),
                    "-o",
                    "-p %d -c listen_addresses=127.0.0.1 -c unix_socket_directories=%s -c fsync=off -c full_page_writes=off"
                            .formatted(server.port, folder),
                    "start");
            return server;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void stop() {
        try {
            as("pg_ctl", "-D", data(), "-m", "immediate", "stop");
            run(List.of("rm", "-rf", folder.toString()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String data() {
        return folder.resolve("data").toString();
    }

    private static Path programs() throws IOException {
        Path versions = Path.of("/usr/lib/postgresql");
        if (Files.isDirectory(versions)) {
            try (Stream<Path> found = Files.list(versions)) {
                return found.map(version -> version.resolve("bin"))
                        .filter(bin -> Files.isExecutable(bin.resolve("initdb")))
                        .max(Comparator.comparingInt(
                                bin -> Integer.parseInt(bin.getName(3).toString())))
                        .orElseThrow(PostgresServer::absent);
            }
        }
        throw absent();
    }

    private static IllegalStateException absent() {
        return new IllegalStateException("PostgreSQL is not installed here (apt-get install postgresql), so the tests"
                + " tagged \"postgres\" cannot run; leave them out with -Dexcluded.groups=deep,postgres");
    }

    /** PostgreSQL will not run as root, so root steps down to the user the package made. */
    private void as(String program, String... arguments) throws IOException {
        List<String> command = new ArrayList<>();
        if (isRoot()) {
            command.addAll(List.of("runuser", "-u", "postgres", "--"));
        }
        command.add(programs.resolve(program).toString());
        command.addAll(List.of(arguments));
        run(command);
    }

    private static void run(List<String> command) throws IOException {
        Path said = Files.createTempFile("said", ".txt");
        try {
            Process process = new ProcessBuilder(command)
                    .directory(Path.of("/").toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(said.toFile())
                    .start();
            if (process.waitFor() != 0) {
                throw new IOException("%s: %s".formatted(String.join(" ", command), Files.readString(said)));
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException(e);
        } finally {
            Files.delete(said);
        }
    }

    private static boolean isRoot() {
        return "root".equals(System.getProperty("user.name"));
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }
}
