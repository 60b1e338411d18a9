package org.leafward.care;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.care.PlacePreview.MarkerMove;
import org.leafward.care.core.plan.Planner;
import org.leafward.care.store.TaskTable;
import org.leafward.climate.LocalClimate;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.Microclimate;
import org.leafward.climate.Place;
import org.leafward.climate.PlaceMarkers;
import org.leafward.climate.SeasonMarker;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.DayWindow;
import org.leafward.measure.NotThere;
import org.leafward.measure.Season;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.stereotype.Service;

/**
 * Plans a site as if its nights were others and compares that with what is stored. Writes
 * nothing.
 */
@Service
public class PlacePreviews {

	/** Most tasks that are named. */
	public static final int MOST_NAMED = 20;

	/** What hangs on nights, with the careful dates of one year in ten. */
	private static final List<MarkerKey> MARKERS = List.of(key(MarkerKind.LAST_SPRING_FREEZE, "28F", 50),
			key(MarkerKind.LAST_SPRING_FREEZE, "32F", 50), key(MarkerKind.LAST_SPRING_FREEZE, "32F", 10),
			key(MarkerKind.NIGHTS_WARM_TO, "55F", 50), key(MarkerKind.FIRST_FALL_FREEZE, "32F", 10),
			key(MarkerKind.FIRST_FALL_FREEZE, "32F", 50), key(MarkerKind.FIRST_FALL_FREEZE, "28F", 50));

	private final InputReader inputs;

	private final SitePlanner planner;

	private final TaskTable tasks;

	private final LocalClimate climate;

	private final Clock clock;

	PlacePreviews(InputReader inputs, SitePlanner planner, TaskTable tasks, LocalClimate climate, Clock clock) {
		this.inputs = inputs;
		this.planner = planner;
		this.tasks = tasks;
		this.climate = climate;
		this.clock = clock;
	}

	private static MarkerKey key(MarkerKind kind, String threshold, int probability) {
		return new MarkerKey(kind, TemperatureThreshold.parse(threshold), probability);
	}

	/**
	 * What other nights would do.
	 * @param site the site
	 * @param nights what its nights would be like
	 * @return markers and tasks that move
	 * @throws NotThere when there is no such site
	 */
	public PlacePreview of(SiteId site, Microclimate nights) {
		SiteInputs now = this.inputs.of(List.of(site), this.clock.instant())
			.stream()
			.findFirst()
			.orElseThrow(() -> new NotThere("There is no site " + site));
		SiteInputs then = now.at(nights);
		Planner rules = this.planner.latest().planner();
		PlanComparison compared = PlanComparison.of(now, this.tasks.stored(site), this.planner.plan(now, rules),
				this.planner.plan(then, rules));
		List<PreviewedChange> moved = compared.all()
			.stream()
			.filter((change) -> !Objects.equals(change.before(), change.after()))
			.sorted(Comparator.comparing(PlacePreviews::first)
				.thenComparing(PreviewedChange::title)
				.thenComparing(PreviewedChange::plant))
			.toList();
		return new PlacePreview(markers(now.site(), then.site().place(), now.today()),
				moved.stream().limit(MOST_NAMED).toList(), Math.max(0, moved.size() - MOST_NAMED),
				compared.all().size() - moved.size());
	}

	private static LocalDate first(PreviewedChange change) {
		DayWindow before = change.before();
		DayWindow after = change.after();
		if (before == null) {
			return Objects.requireNonNull(after).from();
		}
		return (after == null || before.from().isBefore(after.from())) ? before.from() : after.from();
	}

	private List<MarkerMove> markers(Site site, Place then, LocalDate today) {
		int season = Season.containing(today, site.point().hemisphere()).year();
		Map<MarkerKey, Integer> seasons = this.climate.answer(site.place(),
				(markers) -> MARKERS.stream()
					.collect(Collectors.toMap((key) -> key,
							(key) -> passed(date(markers, key, season), today) ? season + 1 : season)));
		Map<MarkerKey, DateOrNone> before = dates(site.place(), seasons);
		Map<MarkerKey, DateOrNone> after = dates(then, seasons);
		List<MarkerMove> moves = new ArrayList<>();
		for (MarkerKey key : MARKERS) {
			moves.add(new MarkerMove(key, before.getOrDefault(key, DateOrNone.NONE).date(),
					after.getOrDefault(key, DateOrNone.NONE).date()));
		}
		return moves;
	}

	private static boolean passed(@Nullable LocalDate date, LocalDate today) {
		return date != null && date.isBefore(today);
	}

	private Map<MarkerKey, DateOrNone> dates(Place place, Map<MarkerKey, Integer> seasons) {
		return this.climate.answer(place,
				(markers) -> seasons.entrySet()
					.stream()
					.collect(Collectors.toMap(Map.Entry::getKey,
							(entry) -> new DateOrNone(date(markers, entry.getKey(), entry.getValue())))));
	}

	private static @Nullable LocalDate date(PlaceMarkers markers, MarkerKey key, int season) {
		return markers.on(key, season).map(SeasonMarker::date).orElse(null);
	}

	/** Maps take no null. */
	private record DateOrNone(@Nullable LocalDate date) {

		private static final DateOrNone NONE = new DateOrNone(null);

	}

}
