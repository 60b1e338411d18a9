package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;

/**
 * What a task is for: a planting, or a site as a whole.
 *
 * @param id identifier of the planting or the site
 * @param planting the planting; null for a site
 * @param species its species; null for a site
 * @param words what readers call it, for example "hedge by the gate (common boxwood)"
 */
public record Subject(UUID id, @Nullable Planting planting, @Nullable Species species, String words) {

	/** What a site as a whole is called. */
	public static final String WHOLE_SITE = "whole site";

	/**
	 * A planting.
	 * @param planting the planting
	 * @param species its species
	 * @return the subject
	 */
	public static Subject of(Planting planting, Species species) {
		String label = planting.label();
		String common = species.commonName();
		return new Subject(planting.id().value(), planting, species,
				label.equalsIgnoreCase(common) ? label : label + " (" + common + ")");
	}

	/**
	 * A site as a whole.
	 * @param site the site
	 * @return the subject
	 */
	public static Subject of(SiteId site) {
		return new Subject(site.value(), null, null, WHOLE_SITE);
	}

	@Nullable PlantingId plantingId() {
		return (this.planting != null) ? this.planting.id() : null;
	}

	@Nullable SpeciesId speciesId() {
		return (this.species != null) ? this.species.id() : null;
	}

	/** The planting date; a site has always been there. */
	LocalDate plantedOn() {
		return (this.planting != null) ? this.planting.plantedOn() : LocalDate.MIN;
	}

}
