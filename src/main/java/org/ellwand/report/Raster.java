package org.ellwand.report;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.FloatSize;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.GraphicsEnvironment;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;

/** Turns an SVG figure into a PNG of twice its size. Nothing of it is loaded where no PNG is wanted. */
final class Raster {
    private static final int SCALE = 2;

    private static final Pattern FAMILY = Pattern.compile("font-family=\"[^\"]*\"");
    /** Without serifs, in the order of preference; what Java itself calls so comes last and is always there. */
    private static final List<String> FAMILIES =
            List.of("Helvetica Neue", "Helvetica", "Arial", "Liberation Sans", "Noto Sans", "DejaVu Sans", "FreeSans");

    private Raster() {}

    /** A family that this machine has: a list of families, as browsers take one, may end at a font with serifs here. */
    private static String family() {
        Set<String> installed =
                Set.of(GraphicsEnvironment.getLocalGraphicsEnvironment().getAvailableFontFamilyNames(Locale.ROOT));
        return FAMILIES.stream().filter(installed::contains).findFirst().orElse(Font.SANS_SERIF);
    }

    /** For the light scheme, and in one family. */
    static String plain(String svg, String family) {
        return FAMILY.matcher(FigureDrawer.unstyled(svg)).replaceAll("font-family=\"" + family + "\"");
    }

    static byte[] png(String path, String svg) {
        try {
            return draw(plain(svg, family()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (RuntimeException | LinkageError | InternalError e) {
            throw new IllegalStateException(
                    path + " cannot be drawn as PNG on this machine; it needs fontconfig and one font. Without --png"
                            + " the report is whole, its figures are SVG (" + e.getMessage() + ")",
                    e);
        }
    }

    private static byte[] draw(String svg) throws IOException {
        SVGDocument document = new SVGLoader()
                .load(
                        new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)),
                        null,
                        LoaderContext.createDefault());
        if (document == null) {
            throw new IllegalStateException("the figure is no SVG document");
        }
        FloatSize size = document.size();
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(size.width * SCALE), (int) Math.ceil(size.height * SCALE), BufferedImage.TYPE_INT_RGB);
        Graphics2D page = image.createGraphics();
        page.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        page.scale(SCALE, SCALE);
        document.render(null, page);
        page.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return bytes.toByteArray();
    }
}
