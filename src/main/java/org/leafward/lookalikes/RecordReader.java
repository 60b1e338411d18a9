package org.leafward.lookalikes;

import java.time.LocalDate;
import java.util.List;
import org.leafward.lookalikes.core.RecordLine;
import org.leafward.register.PlantingId;

/** Gathers what the record of a site says about an injury. */
public interface RecordReader {

	/**
	 * What the record says of a planting.
	 * @param planting the planting
	 * @param seen the day on which the injury was first seen, at the site
	 * @return lines in the order of their weight for a reader; empty when the record says
	 * nothing
	 * @throws org.leafward.measure.NotThere when there is no such planting
	 */
	List<RecordLine> of(PlantingId planting, LocalDate seen);

	/**
	 * What the catalogue says of a species, for a case without a planting.
	 * @param species identifier of the species
	 * @return lines; empty when the species is unknown
	 */
	List<RecordLine> ofSpecies(String species);

}
