package org.leafward.platform.database;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.flyway.autoconfigure.FlywayConfigurationCustomizer;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Conditional;
import org.springframework.context.annotation.Configuration;

/**
 * Which database is used: the one that {@code spring.datasource.url} names, else an
 * embedded PostgreSQL in the data folder.
 */
@Configuration(proxyBeanMethods = false)
class DatabaseConfiguration {

	private static final Logger LOG = LoggerFactory.getLogger(DatabaseConfiguration.class);

	/** The oldest PostgreSQL the migrations are tried on. */
	private static final int OLDEST_MAJOR_VERSION = 15;

	/** Looks at the server before the first migration touches it. */
	@Bean
	FlywayConfigurationCustomizer databaseVersionCheck() {
		return (flyway) -> {
			DataSource source = flyway.getDataSource();
			if (source != null) {
				check(source);
			}
		};
	}

	private static void check(DataSource source) {
		try (Connection connection = source.getConnection()) {
			String product = connection.getMetaData().getDatabaseProductName();
			int major = connection.getMetaData().getDatabaseMajorVersion();
			if (!"PostgreSQL".equals(product) || major < OLDEST_MAJOR_VERSION) {
				throw new DatabaseTrouble(
						"The database is %s %d; Leafward needs PostgreSQL %d or newer.".formatted(product, major,
								OLDEST_MAJOR_VERSION),
						"Point spring.datasource.url to a newer PostgreSQL, or remove it to use the embedded one.");
			}
		}
		catch (SQLException ex) {
			throw new IllegalStateException("The database can't be asked for its version", ex);
		}
	}

	/**
	 * The embedded server; its bean outlives the connection pool, which depends on it.
	 */
	@Configuration(proxyBeanMethods = false)
	@Conditional(NoOutsideDatabase.class)
	static class Embedded {

		@Bean(destroyMethod = "close")
		EmbeddedServer embeddedServer(@Value("${leafward.data-directory:data}") String folder) {
			Path path = Path.of(folder).toAbsolutePath().normalize();
			EmbeddedServer server = EmbeddedServer.start(path);
			LOG.info("Embedded PostgreSQL {} is running; the data lies in {}", EmbeddedServer.MAJOR_VERSION, path);
			return server;
		}

		@Bean
		JdbcConnectionDetails embeddedConnection(EmbeddedServer server) {
			return new JdbcConnectionDetails() {

				@Override
				public String getUsername() {
					return server.user();
				}

				@Override
				public @Nullable String getPassword() {
					return server.password();
				}

				@Override
				public String getJdbcUrl() {
					return server.jdbcUrl();
				}

			};
		}

	}

}
