package org.leafward.register;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.Place;
import org.leafward.measure.BadInput;

/**
 * What of a site decides its dates and the rules that hold there.
 *
 * @param place position, height and microclimate
 * @param region state or province by ISO 3166-2, such as US-MI; empty when not known
 * @param features what the site has
 * @param litresPerMinute what its hose or its sprinklers give, 0.1 to 1,000 l/min; null
 * when nobody measured
 */
public record SiteSetting(Place place, String region, Set<SiteFeature> features, @Nullable Double litresPerMinute) {

	/** Two letters of the country, a hyphen, one to three letters or digits. */
	private static final Pattern REGION = Pattern.compile("[A-Z]{2}-[A-Z0-9]{1,3}");

	/**
	 * A setting whose flow of water nobody measured.
	 * @param place position, height and microclimate
	 * @param region state or province by ISO 3166-2; empty when not known
	 * @param features what the site has
	 */
	public SiteSetting(Place place, String region, Set<SiteFeature> features) {
		this(place, region, features, null);
	}

	/**
	 * Checks region and flow.
	 * @throws BadInput when the region has not the form of such a code, or the flow is
	 * out of its bounds
	 */
	public SiteSetting {
		checkFlow(litresPerMinute);
		region = region(region);
		features = Set.copyOf(features);
	}

	static void checkFlow(@Nullable Double litresPerMinute) {
		if (litresPerMinute != null && !(litresPerMinute >= 0.1 && litresPerMinute <= 1000)) {
			throw new BadInput("a flow of %s l/min is outside 0.1 to 1,000".formatted(litresPerMinute), "flow",
					"see how long the hose takes to fill a bucket, or leave it empty");
		}
	}

	/**
	 * The code of a state or province.
	 * @param given as somebody wrote it; empty for not known
	 * @return in capitals
	 * @throws BadInput when it has not the form of ISO 3166-2
	 */
	public static String region(String given) {
		String code = given.strip().toUpperCase(Locale.ROOT);
		if (!code.isEmpty() && !REGION.matcher(code).matches()) {
			throw new BadInput("'%s' is not the code of a state or province".formatted(given.strip()), "region",
					"give the country and the state, such as US-MI or CA-ON, or leave it empty");
		}
		return code;
	}

}
