package org.leafward.register;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.Findings;

/**
 * A bed to be made, or what one is to be. What it doesn't have of its own is as at the
 * site.
 *
 * @param name what its people call it, 1 to 60 characters, one line
 * @param sun its own light through the day; null as at the site
 * @param wind its own exposure to wind; null as at the site
 * @param litresPerMinute what its own hose or line gives, 0.1 to 1,000 l/min; null as at
 * the site
 */
public record NewBed(String name, @Nullable Sun sun, @Nullable Wind wind, @Nullable Double litresPerMinute) {

	/** Most characters of a name. */
	public static final int LONGEST_NAME = 60;

	/**
	 * Checks name and flow.
	 * @throws org.leafward.measure.BadInput when one is out of its bounds
	 */
	public NewBed {
		Findings all = new Findings();
		String called = name;
		Double flow = litresPerMinute;
		Supplier<String> line = all.read(() -> Words.line("name", called, 1, LONGEST_NAME));
		all.check(() -> SiteSetting.checkFlow(flow));
		name = all.give(line);
	}

	/**
	 * A bed that has all as at the site.
	 * @param name what its people call it
	 * @return the bed
	 */
	public static NewBed named(String name) {
		return new NewBed(name, null, null, null);
	}

}
