package org.leafward.advisories.core.watch;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.GroundReading;
import org.leafward.climate.PlaceDay;
import org.leafward.climate.PlaceNow;
import org.leafward.climate.WaterView;
import org.leafward.measure.Explanation;
import org.leafward.measure.GeoPoint;

/** Made-up scenes: every day alike but for what a test says. */
final class SceneFixture {

	private static final GeoPoint PLACE = new GeoPoint(41, -90, 200);

	private final LocalDate today;

	private final Map<LocalDate, UnaryOperator<PlaceDay>> others = new HashMap<>();

	private final Map<String, LocalDate> markers = new HashMap<>();

	private PlaceDay usual = new PlaceDay(LocalDate.EPOCH, 10.0, 20.0, 0.0, 0.0, 0.0, 2.0, 60.0, 10.0, 10.0);

	private @Nullable Boolean frozen = false;

	private @Nullable Double used = 10.0;

	private int ahead = 5;

	SceneFixture(String today) {
		this.today = LocalDate.parse(today);
	}

	SceneFixture usual(Double low, Double high, Double rain) {
		this.usual = new PlaceDay(LocalDate.EPOCH, low, high, rain, 0.0, 0.0, 2.0, 60.0, 10.0, 10.0);
		return this;
	}

	SceneFixture soil(Double upper) {
		PlaceDay u = this.usual;
		this.usual = new PlaceDay(LocalDate.EPOCH, u.minimum(), u.maximum(), u.rain(), 0.0, u.snowDepth(), u.wind(),
				u.lowestHumidity(), upper, upper);
		return this;
	}

	SceneFixture day(int ahead, @Nullable Double low, @Nullable Double high, @Nullable Double rain,
			@Nullable Double wind, @Nullable Double humidity) {
		this.others.put(this.today.plusDays(ahead), (day) -> new PlaceDay(day.day(), low, high, rain, 0.0,
				day.snowDepth(), wind, humidity, day.upperSoil(), day.soil()));
		return this;
	}

	SceneFixture frozen(@Nullable Boolean ground) {
		this.frozen = ground;
		return this;
	}

	SceneFixture used(@Nullable Double percent) {
		this.used = percent;
		return this;
	}

	SceneFixture noForecast() {
		this.ahead = 0;
		return this;
	}

	SceneFixture marker(String code, String date) {
		this.markers.put(code, LocalDate.parse(date));
		return this;
	}

	Scene scene() {
		List<PlaceDay> observed = new ArrayList<>();
		List<PlaceDay> forecast = new ArrayList<>();
		for (int at = -194; at < this.ahead; at++) {
			LocalDate date = this.today.plusDays(at);
			PlaceDay u = this.usual;
			PlaceDay day = new PlaceDay(date, u.minimum(), u.maximum(), u.rain(), u.newSnow(), u.snowDepth(), u.wind(),
					u.lowestHumidity(), u.upperSoil(), u.soil());
			((at < 0) ? observed : forecast).add(this.others.getOrDefault(date, (one) -> one).apply(day));
		}
		GroundReading ground = (this.frozen != null)
				? new GroundReading(this.today.minusDays(1), this.frozen, Explanation.of("Ground", "")) : null;
		WaterView water = null;
		if (this.used != null) {
			double gone = this.used / 100 * 40;
			water = new WaterView(80, List.of(new WaterView.Day(this.today.minusDays(1), 0, 0, 1, 1, 0, gone, 40, 1,
					gone > 40, false, false, 3, true)), Explanation.of("Water", ""));
		}
		return new Scene(new PlaceNow(PLACE, this.today, observed, forecast, ground, water), (key,
				season) -> Optional.ofNullable(this.markers.get(key.code())).map((date) -> date.withYear(season)));
	}

}
