package org.leafward.lookalikes;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A diagnostic laboratory to which samples of plants go.
 *
 * @param name its name
 * @param address lines of its postal address
 * @param telephone a telephone number; null when none is known
 * @param mail a mail address; null when none is known
 * @param page a web address; null when none is known
 * @param takes what it takes, when, and what it costs
 */
public record Laboratory(String name, List<String> address, @Nullable String telephone, @Nullable String mail,
		@Nullable String page, String takes) {

	public Laboratory {
		address = List.copyOf(address);
	}

}
