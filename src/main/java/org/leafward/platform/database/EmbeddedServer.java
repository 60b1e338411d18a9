package org.leafward.platform.database;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A PostgreSQL server of our own in a data folder, made to keep data: durable writes, a
 * password, one owner at a time, and a start that cleans up after a killed process.
 * <p>
 * Inside the data folder: {@code postgres} (the cluster), {@code binaries} (unpacked
 * programs), {@code database-password}, {@code postgres.log} and {@code in-use.lock}.
 */
final class EmbeddedServer implements AutoCloseable {

	/** Major version of the programs that the build packs. */
	static final String MAJOR_VERSION = "18";

	/**
	 * What a start, a write-ahead log segment and a small garden register need at least.
	 */
	private static final long LEAST_FREE_BYTES = 300L << 20;

	private static final Duration START_LIMIT = Duration.ofSeconds(90);

	private final EmbeddedPostgres postgres;

	private final FileChannel lock;

	private final String password;

	private EmbeddedServer(EmbeddedPostgres postgres, FileChannel lock, String password) {
		this.postgres = postgres;
		this.lock = lock;
		this.password = password;
	}

	/**
	 * Starts the server, with recovery if the last one was killed.
	 * @param folder the data folder; made when missing
	 * @return the running server
	 * @throws DatabaseTrouble when the folder is in use, of another version, unwritable
	 * or the disk is full
	 */
	static EmbeddedServer start(Path folder) {
		return start(folder, LEAST_FREE_BYTES);
	}

	static EmbeddedServer start(Path folder, long leastFreeBytes) {
		makeFolder(folder);
		FileChannel lock = lock(folder);
		boolean started = false;
		try {
			Path cluster = folder.resolve("postgres");
			checkVersion(cluster);
			checkSpace(folder, leastFreeBytes);
			OrphanedPostgres.stop(cluster);
			String password = password(folder);
			EmbeddedServer server = new EmbeddedServer(launch(folder, cluster, password), lock, password);
			started = true;
			return server;
		}
		catch (IOException ex) {
			throw new DatabaseTrouble(
					"The embedded PostgreSQL in %s did not start: %s".formatted(folder, ex.getMessage()),
					"Read %s; it says why PostgreSQL stopped.".formatted(folder.resolve("postgres.log")));
		}
		finally {
			if (!started) {
				release(lock);
			}
		}
	}

	private static EmbeddedPostgres launch(Path folder, Path cluster, String password) throws IOException {
		File log = folder.resolve("postgres.log").toFile();
		return EmbeddedPostgres.builder()
			.setDataDirectory(cluster)
			// Left to its default, the library deletes the data when it closes.
			.setCleanDataDirectory(false)
			.setOverrideWorkingDirectory(folder.resolve("binaries").toFile())
			// Spring stops the server after everything that uses it; a hook of the
			// library's would race that.
			.setRegisterShutdownHook(false)
			.setLocaleConfig("locale", "C.UTF-8")
			.setLocaleConfig("pwfile", folder.resolve("database-password").toAbsolutePath().toString())
			.setConnectConfig("password", password)
			.setDataDirectoryCustomizer(EmbeddedServer::askForPassword)
			// The library turns both off for speed in tests.
			.setServerConfig("fsync", "on")
			.setServerConfig("synchronous_commit", "on")
			.setServerConfig("listen_addresses", "127.0.0.1")
			.setServerConfig("max_connections", "60")
			.setPGStartupWait(START_LIMIT)
			.setErrorRedirector(Redirect.appendTo(log))
			.setOutputRedirector(Redirect.appendTo(log))
			.start();
	}

	private static void askForPassword(File cluster) {
		Path rules = cluster.toPath().resolve("pg_hba.conf");
		if (Files.exists(rules)) {
			try {
				Files.writeString(rules, """
						# Written by Leafward at each start.
						local all all scram-sha-256
						host all all 127.0.0.1/32 scram-sha-256
						host all all ::1/128 scram-sha-256
						""");
			}
			catch (IOException ex) {
				throw new UncheckedIOException(ex);
			}
		}
	}

	private static void makeFolder(Path folder) {
		try {
			Files.createDirectories(folder);
		}
		catch (IOException ex) {
			throw new DatabaseTrouble("The data folder %s can't be made: %s".formatted(folder, ex),
					"Set leafward.data-directory to a folder that this user may write.");
		}
	}

	private static FileChannel lock(Path folder) {
		try {
			FileChannel channel = FileChannel.open(folder.resolve("in-use.lock"), StandardOpenOption.CREATE,
					StandardOpenOption.WRITE);
			try {
				if (channel.tryLock() != null) {
					return channel;
				}
			}
			catch (OverlappingFileLockException ex) {
				// Held by this very process: the same answer.
			}
			channel.close();
		}
		catch (IOException ex) {
			throw new DatabaseTrouble("The data folder %s can't be written: %s".formatted(folder, ex),
					"Set leafward.data-directory to a folder that this user may write.");
		}
		throw new DatabaseTrouble("Another Leafward server is using the data folder %s.".formatted(folder),
				"Stop it, or set leafward.data-directory to another folder, or give both servers one outside PostgreSQL with spring.datasource.url.");
	}

	private static void checkVersion(Path cluster) throws IOException {
		Path file = cluster.resolve("PG_VERSION");
		if (Files.exists(file)) {
			String found = Files.readString(file).strip();
			if (!found.equals(MAJOR_VERSION)) {
				throw new DatabaseTrouble(
						"The data in %s was written by PostgreSQL %s; this server brings PostgreSQL %s."
							.formatted(cluster, found, MAJOR_VERSION),
						"Start the Leafward version that wrote it, or point leafward.data-directory to another folder. Nothing was changed.");
			}
		}
	}

	private static void checkSpace(Path folder, long least) throws IOException {
		long free = Files.getFileStore(folder).getUsableSpace();
		if (free < least) {
			throw new DatabaseTrouble(
					"The disk of %s has %d MB left; the database needs %d MB to start safely.".formatted(folder,
							free >> 20, least >> 20),
					"Free some space or set leafward.data-directory to another disk. Nothing was changed.");
		}
	}

	private static String password(Path folder) throws IOException {
		Path file = folder.resolve("database-password");
		if (!Files.exists(file)) {
			byte[] random = new byte[24];
			new SecureRandom().nextBytes(random);
			Path draft = folder.resolve("database-password.new");
			Files.writeString(draft, Base64.getUrlEncoder().withoutPadding().encodeToString(random) + "\n");
			if (Files.getFileStore(draft).supportsFileAttributeView("posix")) {
				Files.setPosixFilePermissions(draft, PosixFilePermissions.fromString("rw-------"));
			}
			// Whole or not at all: a process killed in between must not leave an empty
			// password behind.
			Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE);
		}
		List<String> lines = Files.readAllLines(file, StandardCharsets.US_ASCII);
		return lines.isEmpty() ? "" : lines.get(0);
	}

	private static void release(@Nullable FileChannel lock) {
		if (lock != null) {
			try {
				lock.close();
			}
			catch (IOException ex) {
				throw new UncheckedIOException(ex);
			}
		}
	}

	String jdbcUrl() {
		return "jdbc:postgresql://127.0.0.1:%d/postgres".formatted(this.postgres.getPort());
	}

	String user() {
		return "postgres";
	}

	String password() {
		return this.password;
	}

	/** Stops PostgreSQL with a checkpoint and gives the folder free. */
	@Override
	public void close() {
		try {
			this.postgres.close();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		finally {
			release(this.lock);
		}
	}

}
