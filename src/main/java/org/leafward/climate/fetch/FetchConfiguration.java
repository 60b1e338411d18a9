package org.leafward.climate.fetch;

import java.time.Clock;
import java.util.List;
import java.util.concurrent.ThreadLocalRandom;
import org.leafward.climate.source.WeatherSource;
import org.leafward.climate.source.forecast.ForecastSettings;
import org.leafward.climate.source.ncei.NceiSettings;
import org.leafward.climate.store.FetchTable;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Wires what takes settings or chance. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties({ NceiSettings.class, ForecastSettings.class })
class FetchConfiguration {

	@Bean
	Fetcher weatherFetcher(List<WeatherSource> sources, FetchTable table, Clock clock) {
		return new Fetcher(sources, table, () -> ThreadLocalRandom.current().nextDouble(), clock);
	}

}
