package org.leafward.support;

import com.zaxxer.hikari.HikariDataSource;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.atomic.AtomicInteger;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.test.util.TestPropertyValues;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;

/**
 * Real PostgreSQL for tests: one server for the JVM, one freshly migrated database for
 * each context or each call of {@link #fresh()}, copied from a template so that it costs
 * milliseconds.
 * <p>
 * With Spring: {@code @ContextConfiguration(initializers = TestDatabase.class)}; without:
 * {@code TestDatabase.fresh()}.
 */
public final class TestDatabase implements ApplicationContextInitializer<ConfigurableApplicationContext> {

	private static final AtomicInteger COUNTER = new AtomicInteger();

	private static EmbeddedPostgres server;

	private static Path folder = Path.of("");

	private static volatile boolean usedBySpring;

	@Override
	public void initialize(ConfigurableApplicationContext context) {
		usedBySpring = true;
		TestPropertyValues
			.of("spring.datasource.url=" + freshUrl(), "spring.datasource.username=postgres",
					"spring.datasource.password=", "spring.datasource.hikari.maximum-pool-size=8",
					"spring.datasource.hikari.minimum-idle=1")
			.applyTo(context);
	}

	/**
	 * A database of its own with every migration applied.
	 * @return a small pool; close it, or leave it to the end of the JVM
	 */
	public static HikariDataSource fresh() {
		HikariDataSource source = new HikariDataSource();
		source.setJdbcUrl(freshUrl());
		source.setUsername("postgres");
		source.setMaximumPoolSize(6);
		source.setMinimumIdle(0);
		return source;
	}

	/**
	 * The address of a fresh database.
	 * @return a JDBC URL that needs no password
	 */
	public static synchronized String freshUrl() {
		String name = "test_" + COUNTER.incrementAndGet();
		sql("create database " + name + " template leafward_template");
		return server().getJdbcUrl("postgres", name);
	}

	private static synchronized EmbeddedPostgres server() {
		if (server == null) {
			try {
				folder = Files.createTempDirectory("leafward-tests");
				server = EmbeddedPostgres.builder()
					.setDataDirectory(folder)
					.setCleanDataDirectory(false)
					.setRegisterShutdownHook(false)
					.setLocaleConfig("locale", "C.UTF-8")
					.setServerConfig("max_connections", "400")
					.start();
			}
			catch (IOException ex) {
				throw new UncheckedIOException(ex);
			}
			// Runs after all contexts are closed, where a plain hook would race their
			// schedulers; where there was none it doesn't run at all.
			SpringApplication.getShutdownHandlers().add(TestDatabase::stop);
			Runtime.getRuntime().addShutdownHook(new Thread(() -> {
				if (!usedBySpring) {
					stop();
				}
			}));
			sql("create database leafward_template");
			Flyway.configure().dataSource(server.getDatabase("postgres", "leafward_template")).load().migrate();
		}
		return server;
	}

	private static void stop() {
		try {
			server.close();
			// Hundreds of thousands of files by then: nobody waits until they are gone.
			new ProcessBuilder("rm", "-rf", folder.toString()).start();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private static void sql(String statement) {
		DataSource source = server().getPostgresDatabase();
		try (Connection connection = source.getConnection(); Statement run = connection.createStatement()) {
			run.execute(statement);
		}
		catch (SQLException ex) {
			throw new IllegalStateException(ex);
		}
	}

}
