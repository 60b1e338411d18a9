package org.leafward.care.core.review;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;
import org.leafward.measure.CsvText;

/**
 * A year as a table of comma-separated values (RFC 4180): a line for each task and for
 * each thing that was done. Dates are ISO 8601; no cell is a formula in a spreadsheet
 * ({@link CsvText#safe}).
 */
public final class ReviewTable {

	/** The names of the columns. */
	public static final List<String> COLUMNS = List.of("record", "id", "first_day", "last_day", "day", "work", "kind",
			"title", "planting", "outcome", "reason", "otherwise", "amount", "unit", "hold_off", "note", "rule",
			"task");

	private ReviewTable() {
	}

	/**
	 * Writes the table.
	 * @param review the year
	 * @return lines that end with CR LF, the first with the names of the columns
	 */
	public static String write(YearReview review) {
		List<List<String>> rows = new ArrayList<>();
		rows.add(COLUMNS);
		review.tasks().forEach((one) -> rows.add(row(one)));
		review.months().forEach((month) -> month.done().forEach((one) -> rows.add(row(one))));
		return CsvText.write(rows.stream().map((row) -> row.stream().map(CsvText::safe).toList()).toList());
	}

	private static List<String> row(Reviewed one) {
		CareTask task = one.task();
		return List.of("task", task.id().toString(), task.window().from().toString(), task.window().to().toString(),
				text(one.doneOn()), (task.work() != null) ? task.work().code() : "", code(task.kind()),
				task.text().title(), (task.planting() != null) ? task.plant() : "",
				(one.outcome() != null) ? one.outcome().code() : "", text(task.withdrawnBecause()),
				text(task.text().otherwise()), "", "", "", "", task.rule(), task.id().toString());
	}

	private static List<String> row(YearReview.Done one) {
		return List.of("done", one.id().toString(), "", "", one.day().toString(), one.work().code(), "", "",
				one.own() ? one.where() : "", "", "", "",
				(one.amount() != null) ? BigDecimal.valueOf(one.amount()).stripTrailingZeros().toPlainString() : "",
				(one.unit() != null) ? one.unit().code() : "", text(one.holdOff()), one.note(), "", text(one.task()));
	}

	private static String code(Enum<?> constant) {
		return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	private static String text(@Nullable Object value) {
		return (value != null) ? value.toString() : "";
	}

}
