package org.leafward.care.core.plan;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.LocalDate;
import java.util.List;
import org.leafward.register.KeptSoilTest;
import org.leafward.register.Planting;
import org.leafward.register.Site;
import org.leafward.register.SiteBeds;
import org.leafward.register.WateredDepths;

/**
 * A fingerprint of all that a plan is made from. A plan hangs on nothing else, so while
 * it stays the same there is nothing to plan.
 */
public final class InputFingerprint {

	/**
	 * Raise it when a change of the program makes another plan of the same inputs, so
	 * that sites don't wait for their next day to follow.
	 */
	private static final int PLANNER = 5;

	private final MessageDigest digest = Wording.sha256();

	private InputFingerprint() {
	}

	/**
	 * The fingerprint.
	 * @param ground the site and its beds, in a fixed order
	 * @param plantings its plantings, in a fixed order
	 * @param observed what people logged there
	 * @param waterings mm by day, those that the plan looks at
	 * @param soilTests those that the plan looks at, in a fixed order
	 * @param weather stands for records and forecasts around it
	 * @param knowledge stands for rules, phenology and catalogue
	 * @param today the day there
	 * @return 32 octets (SHA-256), the same on every machine
	 */
	public static byte[] of(SiteBeds ground, List<Planting> plantings, Observed observed, WateredDepths waterings,
			List<KeptSoilTest> soilTests, String weather, String knowledge, LocalDate today) {
		InputFingerprint all = new InputFingerprint();
		Site site = ground.site();
		all.put(PLANNER);
		all.put(today);
		all.put(knowledge);
		all.put(weather);
		all.put(site.id());
		all.put(site.name());
		all.put(site.owner());
		all.put(site.county());
		all.put(site.region());
		all.put(site.zone());
		all.put(List.of(site.point(), site.soil(), site.sun(), site.wind(), site.microclimate()));
		all.put(site.features().stream().sorted().toList());
		all.put(String.valueOf(site.litresPerMinute()));
		all.put(ground.beds());
		for (Planting planting : plantings) {
			all.put(planting.label());
			all.put(planting);
		}
		all.put(observed.log());
		all.put(waterings.inOrder());
		all.put(soilTests);
		return all.digest.digest();
	}

	/**
	 * Puts a text with its length before it, so that no two can be taken for another two.
	 */
	private void put(Object value) {
		byte[] text = value.toString().getBytes(StandardCharsets.UTF_8);
		this.digest.update(ByteBuffer.allocate(Integer.BYTES).putInt(text.length).array());
		this.digest.update(text);
	}

}
