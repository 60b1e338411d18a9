package org.leafward.quick.qr;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.measure.BadInput;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** Codes are read by another library, ZXing, from what is drawn. */
class QrCodeTests {

	private static final int SCALE = 6;

	private static final Pattern RUN = Pattern.compile("M(\\d+) (\\d+)h(\\d+)v1H(\\d+)z");

	@ParameterizedTest
	@ValueSource(strings = { "webcal://localhost:8080/f/Abc_-0123456789abcdefghijklmnopq/tasks.ics",
			"webcal://calendars.example.org/f/bOxPtQb6V14UE34t84QrX3vXaXuj4dTl/tasks.ics", "a" })
	void anotherLibraryReadsWhatIsDrawn(String text) throws Exception {
		Result read = new QRCodeReader()
			.decode(new BinaryBitmap(new HybridBinarizer(paint(QrCode.svg(text, "address")))));
		assertThat(read.getText()).isEqualTo(text);
		assertThat(read.getBarcodeFormat()).isEqualTo(BarcodeFormat.QR_CODE);
	}

	/** Paints the rectangles of the picture as pixels. */
	private static RGBLuminanceSource paint(String svg) {
		Matcher box = Pattern.compile("viewBox=\"0 0 (\\d+) \\d+\"").matcher(svg);
		assertThat(box.find()).isTrue();
		int size = Integer.parseInt(box.group(1)) * SCALE;
		int[] pixels = new int[size * size];
		Arrays.fill(pixels, 0xffffff);
		Matcher run = RUN.matcher(svg);
		while (run.find()) {
			int x = Integer.parseInt(run.group(1)) * SCALE;
			int y = Integer.parseInt(run.group(2)) * SCALE;
			for (int row = y; row < y + SCALE; row++) {
				Arrays.fill(pixels, row * size + x, row * size + x + Integer.parseInt(run.group(3)) * SCALE, 0);
			}
		}
		return new RGBLuminanceSource(size, size, pixels);
	}

	@Test
	void tooLongIsRefused() {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> QrCode.svg("x".repeat(501), "address"));
	}

}
