package org.leafward.climate.store;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leafward.climate.StationId;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.support.TestDatabase;
import org.springframework.core.io.ClassPathResource;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.core.io.support.PropertiesLoaderUtils;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.JdbcTemplate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** A database in use, with a row for each day, becomes one with a row for each month. */
class ObservationMonthMigrationTests {

	private static final String MIGRATION = "V0022__climate_observation_month.sql";

	private static final StationId STATION = new StationId("XX000000001");

	@TempDir
	private Path older;

	@Test
	void everyValueIsKept() throws IOException {
		for (Resource file : new PathMatchingResourcePatternResolver().getResources("classpath*:db/migration/*.sql")) {
			if (!MIGRATION.equals(file.getFilename())) {
				Files.copy(file.getInputStream(), this.older.resolve(file.getFilename()));
			}
		}
		try (HikariDataSource source = empty()) {
			flyway(source).locations("filesystem:" + this.older).load().migrate();
			JdbcTemplate jdbc = new JdbcTemplate(source);
			jdbc.update("insert into climate.station values (?, 'Old', 45, 10, 100, true)", STATION.value());
			DailyRecord record = fill(jdbc);
			assertThat(flyway(source).locations("classpath:db/migration").load().migrate().migrationsExecuted).isOne();
			ObservationTable table = ClimateTables.on(source).observations();
			assertThat(table.read(STATION).record()).isEqualTo(record);
			assertThat(table.firstDay(STATION)).isEqualTo(record.firstDay());
			assertThat(table.lastDay(STATION)).isEqualTo(record.lastDay());
			assertThat(table.firstDay(new StationId("XX000000002"))).isEmpty();
			refusesWhatIsNoMonth(jdbc);
		}
	}

	private static void refusesWhatIsNoMonth(JdbcTemplate jdbc) {
		String insert = "insert into climate.observation_month (station_id, month, tmin_tenths_celsius, snow_depth_mm) values ('%s', '%s', %s, %s)";
		String february = "array_fill(1, array[28])";
		for (String wrong : List.of(insert.formatted("XX000000009", "2023-02-01", february, february),
				insert.formatted(STATION.value(), "2023-02-02", february, february),
				insert.formatted(STATION.value(), "2024-02-01", february, february),
				insert.formatted(STATION.value(), "2023-02-01", february, "array_fill(1, array[29])"),
				insert.formatted(STATION.value(), "2023-02-01", "null", "null"))) {
			assertThatExceptionOfType(DataIntegrityViolationException.class).as(wrong)
				.isThrownBy(() -> jdbc.execute(wrong));
		}
		jdbc.execute(insert.formatted(STATION.value(), "2023-02-01", february, "null"));
	}

	/** Gaps, a leap day, a month of one day, one without any value. */
	private static DailyRecord fill(JdbcTemplate jdbc) {
		Random random = new Random(5);
		DailyRecord.Builder builder = DailyRecord.builder();
		List<Object[]> rows = new ArrayList<>();
		for (LocalDate day = LocalDate.of(1895, 12, 31); day.getYear() < 1897; day = day.plusDays(1)) {
			Object[] row = new Object[7];
			row[0] = STATION.value();
			row[1] = day;
			for (Element element : Element.values()) {
				boolean wind = element == Element.AWND && day.getMonthValue() < 6;
				if (!wind && random.nextInt(3) > 0) {
					int value = random.nextInt(100);
					row[element.ordinal() + 2] = value;
					builder.set(element, day, value);
				}
			}
			rows.add(row);
		}
		rows.add(new Object[] { STATION.value(), LocalDate.of(1900, 5, 5), null, null, null, null, null });
		jdbc.batchUpdate("insert into climate.observation values (?, ?, ?, ?, ?, ?, ?)", rows);
		return builder.build();
	}

	/**
	 * As the server does it; a database in use already has migrations of later numbers.
	 */
	private static FluentConfiguration flyway(HikariDataSource source) throws IOException {
		String outOfOrder = PropertiesLoaderUtils.loadProperties(new ClassPathResource("application.properties"))
			.getProperty("spring.flyway.out-of-order");
		return Flyway.configure().dataSource(source).outOfOrder(Boolean.parseBoolean(outOfOrder));
	}

	private static HikariDataSource empty() {
		HikariDataSource source = new HikariDataSource();
		try (HikariDataSource other = TestDatabase.fresh()) {
			new JdbcTemplate(other).execute("create database observation_days template template0");
			source.setJdbcUrl(other.getJdbcUrl().replaceFirst("/test_[0-9]+", "/observation_days"));
			source.setUsername(other.getUsername());
			source.setMaximumPoolSize(2);
		}
		return source;
	}

}
