package org.leafward.care.core.plan;

import java.util.Set;
import org.leafward.care.core.rule.PlantFacts;
import org.leafward.care.core.rule.SiteFacts;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;
import org.leafward.plants.Species;
import org.leafward.register.Planting;

/**
 * What is planned for: a planting, its species and the half of the earth it grows on.
 *
 * @param planting the planting
 * @param species its species
 * @param hemisphere hemisphere of its site
 * @param ground the site it grows on
 */
public record Subject(Planting planting, Species species, Hemisphere hemisphere, SiteFacts ground) {

	PlantFacts facts(Season season) {
		Season planted = Season.containing(this.planting.plantedOn(), this.hemisphere);
		return new PlantFacts(this.species.id(), Set.copyOf(this.species.groups()), this.species.traits(),
				this.planting.placement(), this.planting.wintersIndoors(), this.planting.saltExposed(),
				season.year() - planted.year(), this.ground);
	}

	/**
	 * What readers call the planting.
	 * @return for example "hedge by the gate (common boxwood)"
	 */
	public String words() {
		String label = this.planting.label();
		String common = this.species.commonName();
		return label.equalsIgnoreCase(common) ? label : "%s (%s)".formatted(label, common);
	}

}
