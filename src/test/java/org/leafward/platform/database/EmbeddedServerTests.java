package org.leafward.platform.database;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

class EmbeddedServerTests {

	@TempDir(cleanup = CleanupMode.ALWAYS)
	Path folder;

	@Test
	void keepsDataOverARestartAndWritesDurably() throws Exception {
		try (EmbeddedServer server = EmbeddedServer.start(this.folder)) {
			run(server, "create table kept (n int)", "insert into kept values (41), (42)");
			assertThat(ask(server, "show fsync")).isEqualTo("on");
			assertThat(ask(server, "show synchronous_commit")).isEqualTo("on");
		}
		try (EmbeddedServer server = EmbeddedServer.start(this.folder)) {
			assertThat(ask(server, "select sum(n) from kept")).isEqualTo("83");
		}
	}

	@Test
	void letsNobodyInWithoutThePassword() throws Exception {
		try (EmbeddedServer server = EmbeddedServer.start(this.folder)) {
			assertThatExceptionOfType(SQLException.class)
				.isThrownBy(() -> DriverManager.getConnection(server.jdbcUrl(), server.user(), "guess"))
				.satisfies((ex) -> assertThat(ex.getSQLState()).isEqualTo("28P01"));
		}
	}

	@Test
	void startsAgainAfterItsOwnerWasKilled() throws Exception {
		Process owner = new ProcessBuilder(ProcessHandle.current().info().command().orElse("java"), "-cp",
				System.getProperty("java.class.path"), Owner.class.getName(), this.folder.toString())
			.redirectErrorStream(true)
			.redirectOutput(this.folder.resolve("owner.log").toFile())
			.start();
		waitUntil(() -> Files.exists(this.folder.resolve("ready")), owner);
		long postgres = Long.parseLong(Files.readAllLines(this.folder.resolve("postgres/postmaster.pid")).get(0));
		owner.destroyForcibly();
		assertThat(owner.waitFor(20, TimeUnit.SECONDS)).isTrue();
		assertThat(ProcessHandle.of(postgres)).as("PostgreSQL outlives its killed owner").isPresent();

		try (EmbeddedServer server = EmbeddedServer.start(this.folder)) {
			assertThat(ask(server, "select count(*) from committed")).isEqualTo("1000");
			assertThat(ProcessHandle.of(postgres).map(ProcessHandle::isAlive).orElse(false)).isFalse();
		}
	}

	@Test
	void refusesAFolderThatIsInUse() {
		try (EmbeddedServer server = EmbeddedServer.start(this.folder)) {
			assertThat(server.jdbcUrl()).isNotEmpty();
			assertThatExceptionOfType(DatabaseTrouble.class).isThrownBy(() -> EmbeddedServer.start(this.folder))
				.withMessageContaining("Another Leafward server is using the data folder");
		}
	}

	@Test
	void refusesDataOfAnotherMajorVersionAndLeavesItAlone() throws Exception {
		Path cluster = Files.createDirectories(this.folder.resolve("postgres"));
		Files.writeString(cluster.resolve("PG_VERSION"), "14\n");
		assertThatExceptionOfType(DatabaseTrouble.class).isThrownBy(() -> EmbeddedServer.start(this.folder))
			.withMessageContaining("written by PostgreSQL 14")
			.satisfies((ex) -> assertThat(ex.action()).contains("Nothing was changed"));
		assertThat(Files.readString(cluster.resolve("PG_VERSION"))).isEqualTo("14\n");
	}

	@Test
	void refusesADiskWithoutRoom() {
		assertThatExceptionOfType(DatabaseTrouble.class)
			.isThrownBy(() -> EmbeddedServer.start(this.folder, Long.MAX_VALUE))
			.withMessageContaining("MB left");
		assertThat(this.folder.resolve("postgres")).doesNotExist();
	}

	private static void run(EmbeddedServer server, String... statements) throws SQLException {
		try (Connection connection = connect(server)) {
			for (String statement : statements) {
				connection.createStatement().execute(statement);
			}
		}
	}

	private static String ask(EmbeddedServer server, String query) throws SQLException {
		try (Connection connection = connect(server);
				ResultSet result = connection.createStatement().executeQuery(query)) {
			result.next();
			return result.getString(1);
		}
	}

	private static Connection connect(EmbeddedServer server) throws SQLException {
		return DriverManager.getConnection(server.jdbcUrl(), server.user(), server.password());
	}

	private static void waitUntil(Condition condition, Process process) throws Exception {
		long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
		while (!condition.holds()) {
			assertThat(System.nanoTime()).as("the other process gets ready within a minute").isLessThan(deadline);
			assertThat(process.waitFor(50, TimeUnit.MILLISECONDS)).as("the other process ended early").isFalse();
		}
	}

	private interface Condition {

		boolean holds() throws IOException;

	}

	/** A server process that commits a thousand rows and then waits to be killed. */
	static final class Owner {

		private Owner() {
		}

		public static void main(String[] arguments) throws Exception {
			Path folder = Path.of(arguments[0]);
			EmbeddedServer server = EmbeddedServer.start(folder);
			run(server, "create table committed as select generate_series(1, 1000) as n");
			Files.writeString(folder.resolve("ready"), "yes");
			Thread.currentThread().join();
		}

	}

}
