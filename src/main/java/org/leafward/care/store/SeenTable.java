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
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The phases and events that were seen, as planning reads them. */
@Repository
public class SeenTable {

	private final JdbcClient database;

	SeenTable(JdbcClient database) {
		this.database = database;
	}

	private record Seen(UUID site, @Nullable UUID planting, String kind, String name, LocalDate day, int season) {
	}

	/**
	 * What was seen at sites.
	 * @param sites the sites
	 * @return without those where nothing was
	 */
	public Map<SiteId, Observed> of(Collection<SiteId> sites) {
		Map<SiteId, Observed> observed = new HashMap<>();
		this.database.sql("""
				select site, planting, kind, name, day, season from care.observation
				where site = any(?::uuid[]) and undone_at is null order by entered_at, id
				""")
			.param(sites.stream().map(SiteId::value).toArray(UUID[]::new))
			.query((row, number) -> new Seen(row.getObject("site", UUID.class), row.getObject("planting", UUID.class),
					row.getString("kind"), row.getString("name"), row.getObject("day", LocalDate.class),
					row.getInt("season")))
			.list()
			.stream()
			.collect(Collectors.groupingBy(Seen::site))
			.forEach((site, seen) -> observed.put(new SiteId(site), new SeenThere(seen)));
		return observed;
	}

	/** What was seen at one site, in the order in which it was entered. */
	private record SeenThere(List<Seen> all) implements Observed {

		@Override
		public String log() {
			return this.all.toString();
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
