package org.leafward.advisories;

import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;

/** Who grows what in which county, for reach. */
public interface Growers {

	/**
	 * Counts what grows.
	 * @param counties codes of counties; unknown ones count nothing
	 * @param choice which plants
	 * @return the counts of this moment
	 */
	Growth count(Collection<String> counties, PlantChoice choice);

	/**
	 * The people who grow them, for going through all of them in steps.
	 * @param counties codes of counties
	 * @param choice which plants
	 * @param after the last one of the step before; null for the first step
	 * @param most how many at most, 1 to 10,000
	 * @return in the order of their identifiers, the server itself left out
	 */
	List<PersonId> people(Collection<String> counties, PlantChoice choice, @Nullable PersonId after, int most);

}
