package org.leafward.platform.database;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.flywaydb.core.Flyway;
import org.springframework.util.FileSystemUtils;

/**
 * The embedded server with the settings it has in use, durable writes included, in a
 * folder that is thrown away.
 */
public final class BenchServer implements AutoCloseable {

	private final Path folder;

	private final EmbeddedServer server;

	private final HikariDataSource source;

	/**
	 * Starts the server in a new folder below {@code target} and applies every migration.
	 */
	public BenchServer() throws IOException {
		this.folder = Files.createTempDirectory(Files.createDirectories(Path.of("target")), "bench-database");
		this.server = EmbeddedServer.start(this.folder);
		this.source = new HikariDataSource();
		this.source.setJdbcUrl(this.server.jdbcUrl());
		this.source.setUsername(this.server.user());
		this.source.setPassword(this.server.password());
		this.source.setMaximumPoolSize(6);
		Flyway.configure().dataSource(this.source).load().migrate();
	}

	public HikariDataSource source() {
		return this.source;
	}

	/**
	 * Processor time that PostgreSQL took since its start, all its processes together.
	 * @return seconds; not a number where it can't be told
	 */
	public double processorSeconds() throws IOException {
		String pid = Files.readAllLines(this.folder.resolve("postgres/postmaster.pid")).get(0).strip();
		return ProcessHandle.of(Long.parseLong(pid)).map(ProcessorTime::ofTree).orElse(Double.NaN);
	}

	@Override
	public void close() throws IOException {
		this.source.close();
		this.server.close();
		FileSystemUtils.deleteRecursively(this.folder);
	}

}
