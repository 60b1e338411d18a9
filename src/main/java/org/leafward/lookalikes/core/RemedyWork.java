package org.leafward.lookalikes.core;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.leafward.care.core.rule.Work;

/**
 * The kind of work that a remedy is, for the care log. Where a care rule asks for the
 * same its work counts; this reads the title of the others. Pure.
 */
public final class RemedyWork {

	private static final List<Sign> SIGNS = List.of(new Sign("\\b(send|take) .*(laboratory|sample)", Work.SAMPLE),
			new Sign("\\b(soil|leaves) .*tested|\\btest(ed)? the soil|\\bph\\b|soil test|root flare|drain", Work.SOIL),
			new Sign("\\bsalts?\\b|\\brinse|wash the salt", Work.LEACH),
			new Sign("\\b(strong jet|scrape|pick off)", Work.TREAT),
			new Sign("\\b(prune|cut|deadwood|dead wood|saw|shear)", Work.PRUNE),
			new Sign("\\b(rake|clean up|bag|burn|keep the wood|move anything|elm wood)", Work.CLEAN_UP),
			new Sign("\\b(feed|feeding|fed|fertili[sz]er|iron|potassium)\\b", Work.FEED),
			new Sign("\\bmulch", Work.MULCH), new Sign("\\b(water|watering|soak|moist)\\b", Work.WATER),
			new Sign("\\b(harden|back into shade|step by step)", Work.HARDEN),
			new Sign("\\b(cover|covers)\\b", Work.COVER),
			new Sign("\\b(screen|wrap|shelter|shade|guard|fence)", Work.SHELTER),
			new Sign("\\b(eat|harvest)\\b", Work.HARVEST),
			new Sign("\\b(plant|plan|replace|replacement|kinds?|relocat|move)\\b", Work.PLANT));

	private RemedyWork() {
	}

	/** A sign of a kind of work. */
	private record Sign(Pattern words, Work work) {

		Sign(String words, Work work) {
			this(Pattern.compile(words), work);
		}

	}

	/**
	 * The work of a remedy that no rule asks for.
	 * @param remedy the remedy
	 * @return looking, where the title names no other work
	 */
	public static Work of(Remedy remedy) {
		String title = remedy.title().toLowerCase(Locale.ROOT);
		return SIGNS.stream()
			.filter((sign) -> sign.words().matcher(title).find())
			.map(Sign::work)
			.findFirst()
			.orElse(Work.SCOUT);
	}

}
