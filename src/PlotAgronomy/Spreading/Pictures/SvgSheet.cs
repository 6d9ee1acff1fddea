using System.Globalization;
using System.Text;

namespace PlotAgronomy.Spreading;

/// <summary>Builds a plain SVG sheet: numbers in the invariant culture, text escaped, nothing but black, white and
/// greys.</summary>
internal sealed class SvgSheet
{
    private readonly StringBuilder body = new();
    private readonly double width;
    private readonly double height;

    internal SvgSheet(double width, double height, string title)
    {
        this.width = width;
        this.height = height;
        Line(
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {N(width)} {N(height)}\" width=\"{N(width)}\" "
                + $"height=\"{N(height)}\" font-family=\"sans-serif\" font-size=\"13\" fill=\"black\">"
        );
        Line($"<title>{Escape(title)}</title>");
        Line($"<rect width=\"{N(width)}\" height=\"{N(height)}\" fill=\"white\"/>");
    }

    /// <summary>A number to a hundredth of a unit.</summary>
    internal static string N(double value) =>
        Math.Round(value, 2, MidpointRounding.AwayFromZero).ToString("0.##", CultureInfo.InvariantCulture);

    internal void Line(string element) => body.Append(element).Append('\n');

    internal void Text(
        double x,
        double y,
        string text,
        string anchor = "start",
        double size = 13,
        bool bold = false,
        bool halo = false
    )
    {
        string weight = bold ? " font-weight=\"bold\"" : "";
        string outline = halo ? " stroke=\"white\" stroke-width=\"3\" paint-order=\"stroke\"" : "";
        Line(
            $"<text x=\"{N(x)}\" y=\"{N(y)}\" text-anchor=\"{anchor}\" "
                + $"font-size=\"{N(size)}\"{weight}{outline}>{Escape(text)}</text>"
        );
    }

    internal void Segment(
        double x1,
        double y1,
        double x2,
        double y2,
        double thickness = 1,
        string dash = "",
        string color = "black"
    ) =>
        Line(
            $"<line x1=\"{N(x1)}\" y1=\"{N(y1)}\" x2=\"{N(x2)}\" y2=\"{N(y2)}\" stroke=\"{color}\" "
                + $"stroke-width=\"{N(thickness)}\"{Dashed(dash)}/>"
        );

    internal void Polygon(
        IEnumerable<(double X, double Y)> points,
        string fill = "none",
        double thickness = 1,
        string dash = "",
        string stroke = "black",
        string clip = ""
    )
    {
        string clipped = clip.Length > 0 ? $" clip-path=\"url(#{clip})\"" : "";
        Line(
            $"<polygon points=\"{Points(points)}\" fill=\"{fill}\" stroke=\"{stroke}\" stroke-width=\"{N(thickness)}\" "
                + $"stroke-linejoin=\"round\"{Dashed(dash)}{clipped}/>"
        );
    }

    internal void Polyline(
        IEnumerable<(double X, double Y)> points,
        double thickness = 1,
        string dash = "",
        string color = "black"
    ) =>
        Line(
            $"<polyline points=\"{Points(points)}\" fill=\"none\" stroke=\"{color}\" stroke-width=\"{N(thickness)}\" "
                + $"stroke-linejoin=\"round\"{Dashed(dash)}/>"
        );

    /// <summary>Declares thin slanting lines.</summary>
    /// <returns>The fill to draw with.</returns>
    internal string Hatching()
    {
        Line(
            "<pattern id=\"hatch\" width=\"5\" height=\"5\" patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45)\">"
                + "<line x1=\"0\" y1=\"0\" x2=\"0\" y2=\"5\" stroke=\"black\" stroke-width=\"1.2\"/></pattern>"
        );
        return "url(#hatch)";
    }

    /// <summary>Text that reads upwards.</summary>
    internal void UpwardText(double x, double y, string text, double size) =>
        Line(
            $"<text x=\"{N(x)}\" y=\"{N(y)}\" text-anchor=\"middle\" font-size=\"{N(size)}\" transform=\"rotate(-90 {N(x)} "
                + $"{N(y)})\">{Escape(text)}</text>"
        );

    internal void Clip(string id, IEnumerable<(double X, double Y)> points) =>
        Line($"<clipPath id=\"{id}\"><polygon points=\"{Points(points)}\"/></clipPath>");

    /// <summary>A filled arrowhead with its tip at a place, pointing along a direction of the sheet.</summary>
    internal void Arrowhead(double x, double y, double alongX, double alongY, double size = 5)
    {
        double length = Math.Sqrt(alongX * alongX + alongY * alongY);
        double ux = alongX / length * size,
            uy = alongY / length * size;
        Polygon(
            [(x, y), (x - 2 * ux - 0.8 * uy, y - 2 * uy + 0.8 * ux), (x - 2 * ux + 0.8 * uy, y - 2 * uy - 0.8 * ux)],
            "black",
            0
        );
    }

    /// <summary>A bar of four parts, black and white by turns, as long as a round number of units.</summary>
    internal void ScaleBar(double x, double y, double pixels, string start, string end)
    {
        for (int i = 0; i < 4; i++)
        {
            Polygon(
                [
                    (x + pixels * i / 4, y),
                    (x + pixels * (i + 1) / 4, y),
                    (x + pixels * (i + 1) / 4, y + 6),
                    (x + pixels * i / 4, y + 6),
                ],
                i % 2 == 0 ? "black" : "white",
                0.8
            );
        }

        Text(x, y + 20, start, "middle", 12);
        Text(x + pixels, y + 20, end, "middle", 12);
    }

    internal string Finish() => body + "</svg>\n";

    /// <summary>1, 2 or 5 times a power of ten, at most a length.</summary>
    internal static double RoundLength(double atMost)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(atMost)));
        return atMost >= 5 * power ? 5 * power
            : atMost >= 2 * power ? 2 * power
            : power;
    }

    private static string Dashed(string dash) => dash.Length == 0 ? "" : $" stroke-dasharray=\"{dash}\"";

    private static string Points(IEnumerable<(double X, double Y)> points) =>
        string.Join(' ', points.Select(p => $"{N(p.X)},{N(p.Y)}"));

    private static string Escape(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (char c in text)
        {
            escaped.Append(
                c switch
                {
                    '<' => "&lt;",
                    '>' => "&gt;",
                    '&' => "&amp;",
                    '"' => "&quot;",
                    _ when c < ' ' => " ",
                    _ => c.ToString(),
                }
            );
        }

        return escaped.ToString();
    }
}
