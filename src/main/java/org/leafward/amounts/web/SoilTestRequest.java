package org.leafward.amounts.web;

import io.swagger.v3.oas.annotations.Parameter;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.calculator.GivenFigures;
import org.leafward.amounts.salt.Conductivity;
import org.leafward.amounts.salt.Drainage;
import org.leafward.amounts.soiltest.SoilTest;
import org.leafward.amounts.soiltest.SoilTreatment;
import org.leafward.amounts.soiltest.TreatedBed;
import org.leafward.measure.BadInput;
import org.leafward.measure.Dimension;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;

/** A test of the soil as somebody types it from the report; nothing is checked yet. */
record SoilTestRequest(@Parameter(required = true) @Nullable String ph,
		@Parameter(description = "conductivity, dS/m, or with its unit", required = true) @Nullable String ec,
		@Parameter(description = "saturated-paste, which it is when left out, or one-to-two") @Nullable String extract,
		@Parameter(description = "texture of the soil, loam when left out") @Nullable String soil,
		@Parameter(description = "sodium adsorption ratio; this or esp") @Nullable String sar,
		@Parameter(description = "exchangeable sodium percentage; it goes before sar") @Nullable String esp,
		@Parameter(description = "cation exchange capacity, meq/100 g, may be left out") @Nullable String cec,
		@Parameter(description = "of the bed, m², or with its unit", required = true) @Nullable String area,
		@Parameter(
				description = "depth of soil to treat, cm, or with its unit; 15 when left out") @Nullable String depth,
		@Parameter(description = "ESP to come down to, %, 10 when left out") @Nullable String espWanted,
		@Parameter(description = "gypsum in what is spread, %, 90 when left out") @Nullable String purity,
		@Parameter(description = "good, slow, none or untested, which it is when left out") @Nullable String drainage) {

	static SoilTestRequest usual() {
		return new SoilTestRequest(null, null, Calculators.EXTRACT, Calculators.SOIL, null, null, null, null, "15 cm",
				"10", "90", Calculators.DRAINAGE);
	}

	/** The same with what counts where nothing was chosen. */
	SoilTestRequest shown() {
		return new SoilTestRequest(this.ph, this.ec, Calculators.or(this.extract, Calculators.EXTRACT),
				Calculators.or(this.soil, Calculators.SOIL), this.sar, this.esp, this.cec, this.area, this.depth,
				this.espWanted, this.purity, Calculators.or(this.drainage, Calculators.DRAINAGE));
	}

	/** Whether somebody asked for anything. */
	boolean asked() {
		return this.ph != null || this.ec != null || this.area != null;
	}

	Read read() {
		Findings all = new Findings();
		Supplier<SoilTest> test = all.read(this::test);
		Supplier<TreatedBed> bed = all.read(this::bed);
		Supplier<Double> down = all
			.read(() -> Given.number("espWanted", Calculators.or(this.espWanted, "10"), "per cent"));
		Supplier<Double> pure = all
			.read(() -> Given.number("purity", Calculators.or(this.purity, "90"), "per cent") / 100);
		return all.give(() -> new Read(test.get(), SoilTreatment.of(test.get(), bed.get(), down.get(), pure.get())));
	}

	/**
	 * What was given, and its answer.
	 *
	 * @param test the test
	 * @param treatment what to do
	 */
	record Read(SoilTest test, SoilTreatment treatment) {
	}

	/** What it tells of the bed; asked once there is an answer. */
	GivenFigures figures() {
		return GivenFigures.ofTest(test(), bed());
	}

	private SoilTest test() {
		Findings all = new Findings();
		Supplier<Double> acidity = all.read(() -> Given.number("ph", this.ph, "units of pH"));
		Supplier<Optional<Conductivity>> salt = all.read(() -> {
			Given.text("ec", this.ec);
			return SaltRequest.conductivity(this.ec, this.extract, this.soil);
		});
		Supplier<Optional<Double>> percent = all.read(() -> number("esp", this.esp, "per cent"));
		Supplier<Optional<Double>> ratio = all.read(() -> number("sar", this.sar, "the unit of the report"));
		Supplier<Optional<Double>> exchange = all.read(() -> number("cec", this.cec, "meq/100 g"));
		if (Calculators.or(this.sar, "").isEmpty() && Calculators.or(this.esp, "").isEmpty()) {
			all.check(() -> {
				throw new BadInput("sodium is missing", "sar", "fill in SAR or ESP from the report");
			});
		}
		return all.give(() -> percent.get().isPresent()
				? new SoilTest(acidity.get(), salt.get().orElseThrow(), percent.get().get(), null,
						exchange.get().orElse(null))
				: SoilTest.ofRatio(acidity.get(), salt.get().orElseThrow(), ratio.get().orElseThrow(),
						exchange.get().orElse(null)));
	}

	private TreatedBed bed() {
		Findings all = new Findings();
		Supplier<Double> size = all.read(() -> Dimension.AREA.read("area", Calculators.or(this.area, "")));
		Supplier<Double> deep = all.read(() -> Dimension.DEPTH.read("depth", Calculators.or(this.depth, "15")) / 100);
		Supplier<Drainage> drains = all
			.read(() -> Given.word("drainage", Calculators.or(this.drainage, Calculators.DRAINAGE), Drainage.class));
		return all.give(() -> new TreatedBed(size.get(), deep.get(), drains.get()));
	}

	private static Optional<Double> number(String field, @Nullable String given, String unit) {
		return (given == null || given.isBlank()) ? Optional.empty() : Optional.of(Given.number(field, given, unit));
	}

}
