package org.leafward.pages.photo;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.measure.BadInput;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

/** Photos as phones send them, made up here byte by byte. */
class PhotoReaderTests {

	private static final String PLACE = "GPS 42.0813N 91.5791W";

	/** Red above, blue below, with a green corner at the top left. */
	private static BufferedImage picture(int width, int height) {
		BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
		for (int x = 0; x < width; x++) {
			for (int y = 0; y < height; y++) {
				Color color = (x < width / 4 && y < height / 4) ? Color.GREEN
						: (y < height / 2) ? Color.RED : Color.BLUE;
				image.setRGB(x, y, color.getRGB());
			}
		}
		return image;
	}

	private static byte[] file(BufferedImage image, String format) throws IOException {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ImageIO.write(image, format, out);
		return out.toByteArray();
	}

	/**
	 * An Exif segment by CIPA DC-008 (Exif 2.32), 4.5 and 4.6: two entries, the
	 * orientation and a text with a place.
	 */
	private static byte[] withExif(byte[] jpeg, int orientation, ByteOrder order) {
		byte[] place = PLACE.getBytes(StandardCharsets.US_ASCII);
		ByteBuffer tiff = ByteBuffer.allocate(8 + 2 + 2 * 12 + 4 + place.length).order(order);
		tiff.put(((order == ByteOrder.LITTLE_ENDIAN) ? "II" : "MM").getBytes(StandardCharsets.US_ASCII));
		tiff.putShort((short) 42).putInt(8).putShort((short) 2);
		tiff.putShort((short) 0x010e).putShort((short) 2).putInt(place.length).putInt(38);
		tiff.putShort((short) 0x0112).putShort((short) 3).putInt(1).putShort((short) orientation).putShort((short) 0);
		tiff.putInt(0).put(place);
		ByteBuffer out = ByteBuffer.allocate(jpeg.length + 2 + 2 + 6 + tiff.capacity());
		out.put(jpeg, 0, 2).putShort((short) 0xffe1).putShort((short) (2 + 6 + tiff.capacity()));
		out.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII)).put(tiff.array()).put(jpeg, 2, jpeg.length - 2);
		return out.array();
	}

	private static BufferedImage read(Photo photo) throws IOException {
		return ImageIO.read(new ByteArrayInputStream(photo.jpeg()));
	}

	/** The strongest colour at a place that is told in percent. */
	private static String at(BufferedImage image, int x, int y) {
		Color color = new Color(image.getRGB(image.getWidth() * x / 100, image.getHeight() * y / 100));
		return (color.getRed() > 150) ? "red"
				: (color.getGreen() > 150) ? "green" : (color.getBlue() > 150) ? "blue" : "none";
	}

	/**
	 * Where the first row and the first column of the file are to be seen by Exif 2.32,
	 * 4.6.4, tag 0x0112: 1 top and left, 2 top and right, 3 bottom and right, 4 bottom
	 * and left, 5 left and top, 6 right and top, 7 right and bottom, 8 left and bottom.
	 * The green corner lies where both meet; red is the side of the first row.
	 */
	@ParameterizedTest
	@CsvSource({ "1, 5, 5, 50, 40", "2, 95, 5, 50, 40", "3, 95, 95, 50, 60", "4, 5, 95, 50, 60", "5, 5, 5, 40, 50",
			"6, 95, 5, 60, 50", "7, 95, 95, 60, 50", "8, 5, 95, 40, 50" })
	void aPhotoIsTurnedUprightAndLosesWhatItCarried(int orientation, int x, int y, int redX, int redY)
			throws IOException {
		for (ByteOrder order : new ByteOrder[] { ByteOrder.LITTLE_ENDIAN, ByteOrder.BIG_ENDIAN }) {
			byte[] sent = withExif(file(picture(120, 80), "jpeg"), orientation, order);
			assertThat(new String(sent, StandardCharsets.ISO_8859_1)).contains(PLACE, "Exif");
			Photo photo = PhotoReader.read(sent);
			BufferedImage image = read(photo);
			assertThat(image.getWidth()).isEqualTo(photo.width()).isEqualTo((orientation >= 5) ? 80 : 120);
			assertThat(image.getHeight()).isEqualTo(photo.height()).isEqualTo((orientation >= 5) ? 120 : 80);
			assertThat(at(image, x, y)).isEqualTo("green");
			assertThat(at(image, redX, redY)).isEqualTo("red");
			assertThat(new String(photo.jpeg(), StandardCharsets.ISO_8859_1)).doesNotContain(PLACE)
				.doesNotContain("Exif")
				.doesNotContain("GPS");
		}
	}

	@Test
	void aPngIsTakenAndItsClearPartsBecomeWhite() throws IOException {
		BufferedImage clear = new BufferedImage(60, 60, BufferedImage.TYPE_INT_ARGB);
		Photo photo = PhotoReader.read(file(clear, "png"));
		assertThat(new Color(read(photo).getRGB(30, 30)).getRed()).isGreaterThan(250);
	}

	@Test
	void aLargePhotoIsMadeSmaller() throws IOException {
		Photo photo = PhotoReader.read(file(picture(4000, 3000), "jpeg"));
		assertThat(photo.width()).isEqualTo(PhotoReader.SIDE);
		assertThat(photo.height()).isEqualTo(1200);
		assertThat(photo.jpeg()).hasSizeLessThan(1 << 20);
		assertThat(at(read(photo), 50, 25)).isEqualTo("red");
	}

	/**
	 * A PNG of a few bytes that says it has 30,000 by 30,000 pixels (RFC 2083, 4.1.1).
	 */
	@Test
	void whatSaysItIsHugeIsRefusedBeforeItIsDecoded() {
		ByteBuffer png = ByteBuffer.allocate(8 + 25);
		png.put(new byte[] { (byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n' });
		byte[] head = ByteBuffer.allocate(17)
			.put("IHDR".getBytes(StandardCharsets.US_ASCII))
			.putInt(30_000)
			.putInt(30_000)
			.put(new byte[] { 8, 2, 0, 0, 0 })
			.array();
		CRC32 check = new CRC32();
		check.update(head);
		png.putInt(13).put(head).putInt((int) check.getValue());
		assertThatThrownBy(() -> PhotoReader.read(png.array())).isInstanceOf(BadInput.class)
			.hasMessageContaining("30,000 by 30,000");
	}

	@ParameterizedTest
	@ValueSource(
			strings = { "", "GIF89a1234567890", "%PDF-1.7", "<svg xmlns='http://www.w3.org/2000/svg'/>", "BM1234" })
	void whatIsNoJpegAndNoPngIsRefused(String content) {
		assertThatThrownBy(() -> PhotoReader.read(content.getBytes(StandardCharsets.ISO_8859_1)))
			.isInstanceOf(BadInput.class)
			.hasMessageContaining("neither a JPEG nor a PNG");
	}

	@Test
	void whatIsBrokenOrTooSmallIsRefusedInWords() throws IOException {
		byte[] whole = file(picture(400, 300), "jpeg");
		for (int length : new int[] { 3, 20, 200 }) {
			byte[] cut = Arrays.copyOf(whole, length);
			assertThatThrownBy(() -> PhotoReader.read(cut)).isInstanceOf(BadInput.class);
		}
		byte[] tiny = file(picture(8, 8), "png");
		assertThatThrownBy(() -> PhotoReader.read(tiny)).isInstanceOf(BadInput.class).hasMessageContaining("8 by 8");
		assertThatThrownBy(() -> PhotoReader.read(new byte[PhotoReader.MOST_OCTETS + 1])).isInstanceOf(BadInput.class)
			.hasMessageContaining("bytes");
	}

	/** Lengths and offsets that lead nowhere: the picture stays as it is. */
	@Test
	void nonsenseInExifIsPassedOver() throws IOException {
		byte[] sent = withExif(file(picture(120, 80), "jpeg"), 6, ByteOrder.BIG_ENDIAN);
		for (int at = 20; at < 46; at++) {
			byte[] broken = sent.clone();
			broken[at] = (byte) 0xff;
			assertThat(Upright.of(broken)).isBetween(1, 8);
		}
		assertThat(Upright.of(new byte[] { (byte) 0xff, (byte) 0xd8 })).isEqualTo(1);
		assertThat(PhotoReader.read(withExif(file(picture(120, 80), "jpeg"), 99, ByteOrder.BIG_ENDIAN)).width())
			.isEqualTo(120);
	}

}
