package org.leafward.care.store;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.plan.Observed;
import org.leafward.care.core.plan.RampDay;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The phases and events that were seen, as planning reads them. */
@Repository
public class SeenTable {

	/** Longest that a ramp takes, held days included. */
	private static final int RAMP_DAYS = 120;

	private final JdbcClient database;

	SeenTable(JdbcClient database) {
		this.database = database;
	}

	private record Seen(UUID site, @Nullable UUID planting, String kind, String name, LocalDate day, int season) {
	}

	private record Ramped(UUID site, UUID planting, String rule, int season, RampDay day) {
	}

	/**
	 * What was seen at sites, and the days of ramps that were told there.
	 * @param sites the sites
	 * @param around today somewhere on the earth
	 * @return without those where nothing was
	 */
	public Map<SiteId, Observed> of(Collection<SiteId> sites, LocalDate around) {
		Map<UUID, List<Seen>> seen = seen(sites);
		Map<UUID, List<Ramped>> ramped = ramped(sites, around);
		Map<SiteId, Observed> observed = new HashMap<>();
		Stream.concat(seen.keySet().stream(), ramped.keySet().stream())
			.distinct()
			.forEach((site) -> observed.put(new SiteId(site),
					new SeenThere(seen.getOrDefault(site, List.of()), ramped.getOrDefault(site, List.of()))));
		return observed;
	}

	private Map<UUID, List<Ramped>> ramped(Collection<SiteId> sites, LocalDate around) {
		return this.database.sql("""
				select site, planting, rule, season, occurrence, from_day, ramp_step, ramp_held, state from care.task
				where site = any(?::uuid[]) and to_day >= ? and ramp_step is not null
				and (state in ('DONE', 'SKIPPED') or (state = 'PLANNED' and to_day <= ?))
				order by occurrence, id
				""")
			.params(values(sites), around.minusDays(RAMP_DAYS), around.plusDays(1))
			.query((row, number) -> new Ramped(row.getObject("site", UUID.class), row.getObject("planting", UUID.class),
					row.getString("rule"), row.getInt("season"), TaskRows.rampDay(row)))
			.list()
			.stream()
			.collect(Collectors.groupingBy(Ramped::site));
	}

	private static UUID[] values(Collection<SiteId> sites) {
		return sites.stream().map(SiteId::value).toArray(UUID[]::new);
	}

	private Map<UUID, List<Seen>> seen(Collection<SiteId> sites) {
		return this.database.sql("""
				select site, planting, kind, name, day, season from care.observation
				where site = any(?::uuid[]) and undone_at is null order by entered_at, id
				""")
			.param(values(sites))
			.query((row, number) -> new Seen(row.getObject("site", UUID.class), row.getObject("planting", UUID.class),
					row.getString("kind"), row.getString("name"), row.getObject("day", LocalDate.class),
					row.getInt("season")))
			.list()
			.stream()
			.collect(Collectors.groupingBy(Seen::site));
	}

	/** What was seen at one site, in the order in which it was entered. */
	private record SeenThere(List<Seen> all, List<Ramped> ramped) implements Observed {

		@Override
		public String log() {
			return this.all.toString() + this.ramped;
		}

		@Override
		public List<RampDay> ramp(PlantingId planting, String rule, int season) {
			return this.ramped.stream()
				.filter((one) -> one.planting().equals(planting.value()) && one.rule().equals(rule)
						&& one.season() == season)
				.map(Ramped::day)
				.toList();
		}

		private Stream<Seen> all(String kind, String name, int season) {
			return this.all.stream()
				.filter((seen) -> seen.kind().equals(kind) && seen.name().equals(name) && seen.season() == season);
		}

		@Override
		public Optional<LocalDate> phase(PlantingId planting, String phase, int season) {
			// Entered again: the later entry corrects the earlier.
			return all("PHASE", phase, season).filter((seen) -> planting.value().equals(seen.planting()))
				.map(Seen::day)
				.reduce((first, last) -> last);
		}

		@Override
		public Optional<LocalDate> event(@Nullable PlantingId planting, String event, int season) {
			return all("EVENT", event, season).filter(
					(seen) -> seen.planting() == null || (planting != null && planting.value().equals(seen.planting())))
				.map(Seen::day)
				.max(Comparator.naturalOrder());
		}

	}

}
