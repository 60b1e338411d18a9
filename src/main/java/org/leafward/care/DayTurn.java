package org.leafward.care;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.leafward.care.store.SitePlanTable;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.stereotype.Service;

/**
 * Lets tasks follow the days: dry spells grow and turns begin without new data, so each
 * site is derived at least once on each day of its own time zone.
 */
@Service
public class DayTurn {

	private static final int PIECE = 1_000;

	private final Register register;

	private final SitePlanTable plans;

	private final Replanning replanning;

	private final Clock clock;

	DayTurn(Register register, SitePlanTable plans, Replanning replanning, Clock clock) {
		this.register = register;
		this.plans = plans;
		this.replanning = replanning;
		this.clock = clock;
	}

	/**
	 * Asks for the sites that were never derived on the day that it is there.
	 * @return how many
	 */
	public int ask() {
		Instant now = this.clock.instant();
		int asked = 0;
		List<SiteId> piece = this.register.idsAfter(null, PIECE);
		while (!piece.isEmpty()) {
			Map<SiteId, Instant> derived = this.plans.derived(piece);
			List<SiteId> due = new ArrayList<>();
			for (Site site : this.register.find(piece)) {
				Instant last = derived.get(site.id());
				if (last == null
						|| LocalDate.ofInstant(last, site.zone()).isBefore(LocalDate.ofInstant(now, site.zone()))) {
					due.add(site.id());
				}
			}
			this.replanning.ask(due);
			asked += due.size();
			piece = this.register.idsAfter(piece.get(piece.size() - 1), PIECE);
		}
		return asked;
	}

}
