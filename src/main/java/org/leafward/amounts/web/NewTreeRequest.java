package org.leafward.amounts.web;

import io.swagger.v3.oas.annotations.Parameter;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.calculator.GivenFigures;
import org.leafward.amounts.water.NewTreePlan;
import org.leafward.measure.Dimension;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;

/** A new tree as somebody asks about it; nothing is checked yet. */
record NewTreeRequest(
		@Parameter(description = "thickness of the trunk at planting, mm or with its unit", required = true,
				example = "2 in") @Nullable String calliper,
		@Parameter(
				description = "day of planting, year-month-day; a plan without dates when left out") @Nullable String planted,
		@Parameter(description = "how many such trees, 1 when left out") @Nullable String count,
		@Parameter(description = "what the hose gives, l/min or with its unit") @Nullable String flow) {

	static NewTreeRequest usual(LocalDate today) {
		return new NewTreeRequest(null, today.toString(), "1", null);
	}

	/** Whether somebody asked for anything. */
	boolean asked() {
		return this.calliper != null;
	}

	NewTreePlan plan() {
		Findings all = new Findings();
		Supplier<Double> trunk = all.read(this::trunk);
		Supplier<Optional<LocalDate>> day = all.read(this::day);
		Supplier<Integer> trees = all.read(() -> Given.whole("count", Calculators.or(this.count, "1")));
		Supplier<Optional<Double>> hose = all.read(this::hose);
		return all
			.give(() -> NewTreePlan.of(trunk.get(), day.get().orElse(null), trees.get(), hose.get().orElse(null)));
	}

	GivenFigures figures() {
		return GivenFigures.ofTree(trunk(), hose().orElse(null), day().orElse(null));
	}

	private double trunk() {
		return Dimension.THICKNESS.read("calliper", Given.text("calliper", this.calliper));
	}

	private Optional<LocalDate> day() {
		return (this.planted == null || this.planted.isBlank()) ? Optional.empty()
				: Optional.of(Given.date("planted", this.planted));
	}

	private Optional<Double> hose() {
		return Calculators.quantity(Dimension.FLOW, "flow", this.flow);
	}

}
