package org.leafward.climate.source.ncei;

import java.net.URI;
import java.util.List;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * Which records are fetched; none is by default.
 *
 * @param stations identifiers of the stations
 * @param url the service's address
 */
@ConfigurationProperties("leafward.ncei")
public record NceiSettings(@DefaultValue List<String> stations,
		@DefaultValue("https://www.ncei.noaa.gov/access/services/data/v1") URI url) {

	public NceiSettings {
		stations = List.copyOf(stations);
	}

}
