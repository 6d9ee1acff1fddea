using System.Globalization;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>Draws an overlapped pattern as an SVG sheet to print in black and white: what each pass throws, what lies on the
/// ground, its mean and its limits.</summary>
internal static class PatternPicture
{
    private const double Width = 800;
    private const double Height = 480;
    private const double Left = 78;
    private const double Right = 132;
    private const double Top = 104;
    private const double Bottom = 104;
    private const int Points = 480;

    /// <summary>Draws two passes' width of an overlapped pattern.</summary>
    /// <param name="overlapped">Overlapped pattern.</param>
    /// <param name="limitPercent">Coefficient of variation whose band is drawn about the mean, in percent; above 0. Null takes 15
    /// %.</param>
    /// <returns>The text of an SVG file.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The limit is outside its range.</exception>
    internal static string Draw(OverlappedPattern overlapped, double? limitPercent = null)
    {
        ArgumentNullException.ThrowIfNull(overlapped);
        double limit = Guard.AboveUpTo(limitPercent ?? SpreadingConstants.All["cv-good"], 0, 100, "%", nameof(limitPercent));
        double swath = overlapped.Swath.Feet,
            from = -swath / 2,
            to = 1.5 * swath;
        double[] places = [.. Enumerable.Range(0, Points + 1).Select(i => from + (to - from) * i / Points)];
        double[] ground =
        [
            .. places.Select(x =>
                100 * PatternMath.Overlapped(overlapped.Pattern, x, swath, overlapped.Driving) / overlapped.Mean
            ),
        ];
        double highest = Math.Max(100 + limit, Math.Max(ground.Max(), 100 * overlapped.HighestToMean)) * 1.08;
        double step = highest > 250 ? 100 : 50;
        double top = Math.Ceiling(highest / step) * step;
        double X(double feet) => Left + (feet - from) / (to - from) * (Width - Left - Right);
        double Y(double percent) => Height - Bottom - percent / top * (Height - Top - Bottom);

        var sheet = new SvgSheet(Width, Height, "Overlapped pattern");
        sheet.Text(Left, 26, "What lies on the ground across two passes", size: 17, bold: true);
        sheet.Text(
            Left,
            48,
            $"passes {Amounts.Print(overlapped.Swath, decimals: 1)} apart, {SpreadingWords.DrivingMethods[overlapped.Driving]}; "
                + $"thinnest {Print(100 * overlapped.LowestToMean, 0)} %, heaviest {Print(100 * overlapped.HighestToMean, 0)} "
                + "% of the mean"
        );
        sheet.Text(
            Left,
            68,
            $"CV {Print(overlapped.SampleCvPercent, 1)} % (sample), {Print(overlapped.PopulationCvPercent, 1)} % (population); "
                + "real driving adds to it"
        );
        DrawAxes(sheet, swath, from, to, top, step, X, Y);
        sheet.Polygon(
            [(X(from), Y(100 + limit)), (X(to), Y(100 + limit)), (X(to), Y(100 - limit)), (X(from), Y(100 - limit))],
            "#ececec",
            0,
            stroke: "none"
        );
        sheet.Segment(X(from), Y(100 + limit), X(to), Y(100 + limit), 0.8, "2 3");
        sheet.Segment(X(from), Y(100 - limit), X(to), Y(100 - limit), 0.8, "2 3");
        sheet.Segment(X(from), Y(100), X(to), Y(100), 1.2);
        DrawPasses(sheet, overlapped, swath, places, X, Y);
        sheet.Polyline(places.Select((x, i) => (X(x), Y(ground[i]))), 2.6);
        sheet.Text(X(to) + 6, Y(100) + 4, "mean", size: 12);
        // The labels of a narrow band keep clear of the mean's.
        sheet.Text(X(to) + 6, Math.Min(Y(100 + limit) - 2, Y(100) - 10), $"mean + {Amounts.Print(limit, 1)} %", size: 12);
        sheet.Text(X(to) + 6, Math.Max(Y(100 - limit) + 12, Y(100) + 18), $"mean - {Amounts.Print(limit, 1)} %", size: 12);
        DrawLegend(sheet);
        return sheet.Finish();
    }

    private static void DrawAxes(
        SvgSheet sheet,
        double swath,
        double from,
        double to,
        double top,
        double step,
        Func<double, double> x,
        Func<double, double> y
    )
    {
        sheet.Segment(x(from), y(0), x(to), y(0), 1.2);
        sheet.Segment(x(from), y(0), x(from), y(top), 1.2);
        for (double percent = 0; !Tolerance.IsAbove(percent, top); percent += step)
        {
            sheet.Segment(x(from) - 5, y(percent), x(from), y(percent));
            sheet.Text(x(from) - 9, y(percent) + 4, $"{Print(percent, 0)} %", "end", 12);
        }

        double tick = SvgSheet.RoundLength((to - from) / 6);
        for (double feet = Math.Ceiling(from / tick) * tick; !Tolerance.IsAbove(feet, to); feet += tick)
        {
            sheet.Segment(x(feet), y(0), x(feet), y(0) + 5);
            sheet.Text(x(feet), y(0) + 18, Print(feet, 1), "middle", 12);
        }

        foreach (var (pass, feet) in new[] { ("first pass", 0.0), ("second pass", swath) })
        {
            sheet.Segment(x(feet), y(0), x(feet), y(top), 0.6, "1 4");
            sheet.Text(x(feet), y(top) - 6, pass, "middle", 12);
        }

        sheet.Text((x(from) + x(to)) / 2, y(0) + 36, "feet across the passes, from the first path", "middle", 12);
        sheet.UpwardText(22, (y(0) + y(top)) / 2, "part of the mean", 12);
    }

    /// <summary>What each pass throws by itself, in and beside the window.</summary>
    private static void DrawPasses(
        SvgSheet sheet,
        OverlappedPattern overlapped,
        double swath,
        double[] places,
        Func<double, double> x,
        Func<double, double> y
    )
    {
        var pattern = overlapped.Pattern;
        double reach = Math.Max(Math.Abs(pattern.LeftFeet), Math.Abs(pattern.RightFeet));
        int most = (int)Math.Ceiling(reach / swath) + 2;
        for (int pass = -most; pass <= most; pass++)
        {
            int side = overlapped.Driving == DrivingMethod.BackAndForth && pass % 2 != 0 ? -1 : 1;
            var thrown = places
                .Select(p => (Place: p, Percent: 100 * pattern.AmountAt(side * (p - pass * swath)) / overlapped.Mean))
                .Where(p => p.Percent > 0)
                .ToList();
            if (thrown.Count > 1)
            {
                sheet.Polyline(thrown.Select(p => (x(p.Place), y(p.Percent))), 0.9, "5 3");
            }
        }
    }

    private static void DrawLegend(SvgSheet sheet)
    {
        double y = Height - 28;
        sheet.Segment(Left, y, Left + 34, y, 2.6);
        sheet.Text(Left + 42, y + 4, "on the ground", size: 12);
        sheet.Segment(Left + 170, y, Left + 204, y, 0.9, "5 3");
        sheet.Text(Left + 212, y + 4, "thrown by each pass", size: 12);
        sheet.Polygon(
            [(Left + 370, y - 7), (Left + 404, y - 7), (Left + 404, y + 7), (Left + 370, y + 7)],
            "#ececec",
            0,
            stroke: "none"
        );
        sheet.Segment(Left + 370, y - 7, Left + 404, y - 7, 0.8, "2 3");
        sheet.Segment(Left + 370, y + 7, Left + 404, y + 7, 0.8, "2 3");
        sheet.Text(Left + 412, y + 4, "mean and one standard deviation at the CV limit", size: 12);
    }

    private static string Print(double number, int decimals) =>
        decimals == 0 ? number.ToString("0", CultureInfo.InvariantCulture) : Amounts.Print(number, decimals);
}
