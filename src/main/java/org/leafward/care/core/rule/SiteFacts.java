package org.leafward.care.core.rule;

import java.util.Set;
import org.leafward.register.SiteFeature;
import org.leafward.register.SoilTexture;

/**
 * What a rule may ask about a site.
 *
 * @param region code of ISO 3166-2 such as US-MI, empty when not known
 * @param county county by name, empty when not known
 * @param soil soil texture
 * @param features what the site has
 */
public record SiteFacts(String region, String county, SoilTexture soil, Set<SiteFeature> features) {

	public SiteFacts {
		features = Set.copyOf(features);
	}

}
