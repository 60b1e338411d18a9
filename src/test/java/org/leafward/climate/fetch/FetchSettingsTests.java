package org.leafward.climate.fetch;

import java.net.URI;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.leafward.climate.source.WeatherSource;
import org.leafward.climate.source.forecast.ForecastSettings;
import org.leafward.climate.source.ncei.NceiSettings;
import org.leafward.climate.store.FetchTable;
import org.leafward.climate.store.OutsideTables;
import org.springframework.boot.test.context.runner.ApplicationContextRunner;
import org.springframework.jdbc.datasource.DriverManagerDataSource;

import static org.assertj.core.api.Assertions.assertThat;

/** What the operator writes, as the sources see it. */
class FetchSettingsTests {

	private final ApplicationContextRunner runner = new ApplicationContextRunner()
		.withUserConfiguration(FetchConfiguration.class)
		.withBean(Clock.class, Clock::systemUTC)
		.withBean(WeatherSource.class, Silent::new)
		.withBean(FetchTable.class, () -> OutsideTables.on(new DriverManagerDataSource()).fetches());

	@Test
	void nothingIsConfiguredByDefault() {
		this.runner.withPropertyValues("leafward.ncei.stations=", "leafward.forecast.nws.stations=").run((context) -> {
			assertThat(context.getBean(NceiSettings.class).stations()).isEmpty();
			assertThat(context.getBean(ForecastSettings.class).nws().stations()).isEmpty();
			assertThat(context.getBean(ForecastSettings.class).csv()).isEmpty();
			assertThat(context.getBean(NceiSettings.class).url().getScheme()).isEqualTo("https");
			assertThat(context.getBean(ForecastSettings.class).nws().url()).hasToString("https://api.weather.gov");
		});
	}

	@Test
	void stationsStandBetweenCommas() {
		this.runner
			.withPropertyValues("leafward.ncei.stations=USW00094728, USC00118740",
					"leafward.forecast.csv.USW00094728=https://weather.example/a.csv")
			.run((context) -> {
				assertThat(context.getBean(NceiSettings.class).stations()).containsExactly("USW00094728",
						"USC00118740");
				assertThat(context.getBean(ForecastSettings.class).csv()).containsEntry("USW00094728",
						URI.create("https://weather.example/a.csv"));
			});
	}

	private static final class Silent implements WeatherSource {

		@Override
		public String name() {
			return "silent";
		}

		@Override
		public boolean observed() {
			return true;
		}

		@Override
		public Duration every() {
			return Duration.ofHours(1);
		}

		@Override
		public List<String> stations() {
			return List.of();
		}

		@Override
		public Fetched fetch(String station, Progress progress) {
			throw new IllegalStateException("nobody asks");
		}

	}

}
