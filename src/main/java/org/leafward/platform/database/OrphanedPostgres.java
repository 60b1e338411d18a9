package org.leafward.platform.database;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Stops a PostgreSQL that outlived the server that started it. When a JVM is killed its
 * database process lives on and holds the folder. The caller holds the folder's lock, so
 * no living server of ours can be the owner.
 */
final class OrphanedPostgres {

	private static final int STOP_LIMIT_SECONDS = 60;

	private OrphanedPostgres() {
	}

	static void stop(Path cluster) throws IOException {
		Path file = cluster.resolve("postmaster.pid");
		if (!Files.exists(file)) {
			return;
		}
		List<String> lines = Files.readAllLines(file);
		if (lines.size() < 2 || !Path.of(lines.get(1).strip()).toAbsolutePath().equals(cluster.toAbsolutePath())) {
			return;
		}
		Optional<ProcessHandle> process = ProcessHandle.of(Long.parseLong(lines.get(0).strip()))
			.filter(OrphanedPostgres::isPostgres);
		if (process.isPresent()) {
			interrupt(process.get(), cluster);
		}
	}

	private static boolean isPostgres(ProcessHandle process) {
		// The number may belong to somebody else's process by now.
		return process.info().command().map((command) -> command.endsWith("/bin/postgres")).orElse(false);
	}

	private static void interrupt(ProcessHandle process, Path cluster) throws IOException {
		try {
			// SIGINT is PostgreSQL's "fast shutdown": sessions are ended, data is
			// flushed.
			new ProcessBuilder("kill", "-INT", String.valueOf(process.pid())).start().waitFor();
			process.onExit().get(STOP_LIMIT_SECONDS, TimeUnit.SECONDS);
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
			throw new IOException("interrupted while stopping an orphaned PostgreSQL", ex);
		}
		catch (ExecutionException | TimeoutException ex) {
			throw new DatabaseTrouble("A PostgreSQL left over from a killed server (process %d) still holds %s."
				.formatted(process.pid(), cluster), "Stop that process, then start again.");
		}
	}

}
