package org.leafward.care;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.store.PhenologyTable;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.measure.Season;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.stereotype.Service;

/**
 * Phases and events that people saw. A phase replaces its estimate in that season; rules
 * hang on events. The site is derived again in the same transaction, so that dates move
 * at once. A person who is named must own the site; none is an operator.
 */
@Service
public class PhenologyLog {

	/** A bound against scripts. */
	private static final int MOST_A_DAY = 200;

	private final SiteTurn turn;

	private final PhenologyTable observations;

	private final RulePacks packs;

	PhenologyLog(SiteTurn turn, PhenologyTable observations, RulePacks packs) {
		this.turn = turn;
		this.observations = observations;
		this.packs = packs;
	}

	/**
	 * Enters what was seen. The same phase again corrects the earlier entry; of an event
	 * the latest day counts.
	 * @param id the site
	 * @param seen what was seen
	 * @param by who; null for an operator
	 * @return the observation
	 * @throws NotThere when there is no such site of theirs
	 * @throws BadInput when the day is to come or more than a year ago, the planting is
	 * not one of the site's, or there is no such phase or event
	 */
	public Observation observe(SiteId id, NewObservation seen, @Nullable PersonId by) {
		Site site = this.turn.open(id, by);
		this.turn.checkDay(site, seen.day());
		this.turn.checkPlanting(site, seen.planting());
		checkName(seen);
		int season = Season.containing(seen.day(), site.point().hemisphere()).year();
		return this.turn.change(site, () -> {
			if (this.observations.count(id, seen.day()) >= MOST_A_DAY) {
				throw new BadInput("one site has at most %d observations on a day".formatted(MOST_A_DAY), "day",
						"take back what was entered twice");
			}
			Observation entry = new Observation(new ObservationId(UUID.randomUUID()), id, seen.planting(), seen.kind(),
					seen.name(), seen.day(), season, by, this.turn.now());
			this.observations.add(entry);
			return entry;
		});
	}

	private void checkName(NewObservation seen) {
		if (seen.kind() == Observation.Kind.EVENT) {
			if (this.packs.phenology().event(seen.name()).isEmpty()) {
				throw new BadInput("there is no event '%s'".formatted(seen.name()), "name",
						"choose one of those in config/phenology");
			}
		}
		else if (this.packs.phenology().phase(seen.name()).isEmpty()) {
			throw new BadInput("there is no phase '%s'".formatted(seen.name()), "name",
					"choose one of those in config/phenology");
		}
		else if (seen.planting() == null) {
			throw new BadInput("a site as a whole has no phase", "planting", "say on which planting it was seen");
		}
	}

	/**
	 * Takes an observation back; the estimate counts again.
	 * @param id the site
	 * @param observation the observation
	 * @param by who; null for an operator
	 * @throws NotThere when there is no such observation of theirs
	 */
	public void remove(SiteId id, ObservationId observation, @Nullable PersonId by) {
		Site site = this.turn.open(id, by);
		this.turn.change(site, () -> {
			Observation found = this.observations.find(observation)
				.filter((one) -> one.site().equals(id))
				.orElseThrow(() -> new NotThere("There is no observation " + observation));
			this.observations.undo(observation, this.turn.now());
			return found;
		});
	}

	/**
	 * A page of a site's observations, the latest day first.
	 * @param site the site
	 * @param page from 0
	 * @param size 1 to 200
	 * @return without what was taken back
	 */
	public List<Observation> latest(SiteId site, int page, int size) {
		return this.observations.latest(site, page, size);
	}

}
