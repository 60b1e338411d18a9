package org.leafward.climate.source.forecast;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.net.URI;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.ForecastDay;
import org.leafward.climate.Forecasts;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.Stations;
import org.leafward.climate.source.Download;
import org.leafward.climate.source.FetchFailed;
import org.leafward.climate.source.WeatherSource;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.NotThere;
import org.springframework.stereotype.Component;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The grid forecast of the US National Weather Service for a station's point: the address
 * {@code /points/{latitude},{longitude}} names the grid cell, the cell holds layers of
 * values with their spans of time (documented at
 * https://www.weather.gov/documentation/services-web-api).
 */
@Component
public class NwsSource implements WeatherSource {

	private static final String NAME = "nws";

	private static final Duration EVERY = Duration.ofMinutes(58);

	private static final Set<String> TYPES = Set.of("application/geo+json", "application/json", "application/ld+json");

	private static final int MOST_DAYS = 15;

	private static final JsonMapper JSON = JsonMapper.builder().build();

	private final ForecastSettings.Nws settings;

	private final Download download;

	private final Stations stations;

	private final Forecasts forecasts;

	private final Clock clock;

	/**
	 * Creates the source.
	 * @param settings which stations
	 * @param download fetches
	 * @param stations where they stand
	 * @param forecasts takes what comes
	 * @param clock tells which days are over
	 */
	public NwsSource(ForecastSettings settings, Download download, Stations stations, Forecasts forecasts,
			Clock clock) {
		this.settings = settings.nws();
		this.download = download;
		this.stations = stations;
		this.forecasts = forecasts;
		this.clock = clock;
	}

	@Override
	public String name() {
		return NAME;
	}

	@Override
	public boolean observed() {
		return false;
	}

	@Override
	public Duration every() {
		return EVERY;
	}

	@Override
	public List<String> stations() {
		return this.settings.stations();
	}

	@Override
	public Fetched fetch(String station, Progress progress) {
		StationId id = new StationId(station);
		Station known = this.stations.find(id).orElseThrow(() -> new NotThere("station " + id.value()));
		JsonNode place = properties(this.settings.url() + "/points/" + words(known.point()));
		ZoneId zone = zone(place.path("timeZone").asString(""));
		JsonNode grid = properties(cell(place));
		LocalDate today = this.clock.instant().atZone(zone).toLocalDate();
		List<ForecastDay> days = new GridDays(zone).build(layers(grid), today, MOST_DAYS);
		if (days.isEmpty()) {
			throw new FetchFailed("the forecast has no day with a temperature");
		}
		this.forecasts.keep(id, NAME, issued(grid), days);
		return new Fetched(true, null);
	}

	/** At most four decimals, no zeros at the end: other forms are only redirected. */
	private static String words(GeoPoint point) {
		return number(point.latitude()) + "," + number(point.longitude());
	}

	private static String number(double degrees) {
		BigDecimal rounded = BigDecimal.valueOf(degrees).setScale(4, RoundingMode.HALF_UP);
		return (rounded.signum() == 0) ? "0" : rounded.stripTrailingZeros().toPlainString();
	}

	private JsonNode properties(String address) {
		String text = this.download.text(URI.create(address), "application/geo+json", TYPES);
		try {
			JsonNode properties = JSON.readTree(text).path("properties");
			if (!properties.isObject()) {
				throw new FetchFailed("the forecast service's answer has no properties");
			}
			return properties;
		}
		catch (JacksonException ex) {
			throw new FetchFailed("the forecast service's answer is broken off or no JSON");
		}
	}

	/** An answer may not send us to another server. */
	private String cell(JsonNode place) {
		String address = place.path("forecastGridData").asString("");
		try {
			URI cell = URI.create(address);
			URI own = this.settings.url();
			if (Objects.equals(cell.getScheme(), own.getScheme()) && Objects.equals(cell.getHost(), own.getHost())
					&& cell.getPort() == own.getPort()) {
				return address;
			}
		}
		catch (IllegalArgumentException ex) {
			// said below
		}
		throw new FetchFailed("the forecast service names no grid cell of its own for this place");
	}

	private static ZoneId zone(String name) {
		try {
			return ZoneId.of(name);
		}
		catch (DateTimeException ex) {
			throw new FetchFailed("the forecast service names no time zone for this place");
		}
	}

	private static @Nullable Instant issued(JsonNode grid) {
		try {
			return OffsetDateTime.parse(grid.path("updateTime").asString("")).toInstant();
		}
		catch (DateTimeException ex) {
			throw new FetchFailed("the forecast doesn't say when it was made");
		}
	}

	private static GridDays.Layers layers(JsonNode grid) {
		List<String> degrees = List.of("degC", "degF");
		return new GridDays.Layers(GridLayer.read(grid, "minTemperature", degrees),
				GridLayer.read(grid, "maxTemperature", degrees),
				GridLayer.read(grid, "quantitativePrecipitation", List.of("mm")),
				GridLayer.read(grid, "snowfallAmount", List.of("mm")),
				GridLayer.read(grid, "windSpeed", List.of("km_h-1", "m_s-1")),
				GridLayer.read(grid, "relativeHumidity", List.of("percent")));
	}

}
