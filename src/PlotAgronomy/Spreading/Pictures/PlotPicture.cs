using System.Globalization;
using PlotAgronomy.Land;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>Draws a pass plan as an SVG sheet to print in black and white: outline, strips, passes with their direction, headland
/// lap, scale bar and north.</summary>
internal static class PlotPicture
{
    private const double Width = 800;
    private const double Margin = 46;
    private const double Top = 66;
    private const double Bottom = 92;
    private const double MostDrawingHeight = 620;
    private const double LeastDrawingHeight = 120;
    private const int MostNumbers = 30;
    private const string StripGrey = "#ececec";
    private const string LapGrey = "#d9d9d9";
    private const string OutlineClip = "plot";

    /// <summary>Draws a plan.</summary>
    /// <param name="plan">Plan.</param>
    /// <returns>The text of an SVG file.</returns>
    internal static string Draw(FieldPasses plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var corners = plan.Outline.Corners.Concat(plan.Passes.SelectMany(p => new[] { p.Start, p.End })).ToList();
        double west = corners.Min(c => c.EastFeet),
            east = corners.Max(c => c.EastFeet),
            south = corners.Min(c => c.NorthFeet),
            north = corners.Max(c => c.NorthFeet);
        double pixelsPerFoot = Math.Min((Width - 2 * Margin) / (east - west), MostDrawingHeight / (north - south));
        double drawingHeight = Math.Max(LeastDrawingHeight, (north - south) * pixelsPerFoot);
        double left = (Width - (east - west) * pixelsPerFoot) / 2,
            bottom = Top + drawingHeight - (drawingHeight - (north - south) * pixelsPerFoot) / 2;
        (double X, double Y) At(PlanePoint place) =>
            (left + (place.EastFeet - west) * pixelsPerFoot, bottom - (place.NorthFeet - south) * pixelsPerFoot);

        string name = plan.Outline.Name.Length > 0 ? plan.Outline.Name : "Plot";
        var sheet = new SvgSheet(Width, Top + drawingHeight + Bottom, $"Passes over {name}");
        sheet.Text(Margin, 26, name, size: 17, bold: true);
        sheet.Text(Margin, 46, Summary(plan));
        sheet.Clip(OutlineClip, plan.Outline.Corners.Select(At));
        DrawGround(sheet, plan, At, pixelsPerFoot);
        DrawPasses(sheet, plan, At, pixelsPerFoot);
        DrawLegend(sheet, plan, Top + drawingHeight + 34, pixelsPerFoot);
        return sheet.Finish();
    }

    private static string Summary(FieldPasses plan)
    {
        string pass = plan.Passes.Length == 1 ? "pass" : "passes";
        string passes = plan.Passes.IsEmpty
            ? "no passes inside the lap"
            : $"{Amounts.Print(plan.Passes.Length, 0)} {pass}{Apart(plan)}, first one toward {plan.Direction}";
        string lap = plan.Lap.IsEmpty ? "" : $"; headland lap {Amounts.Print(plan.LapLength, decimals: 0)}";
        return $"{Amounts.Print(plan.Outline.Area, decimals: 2)}; {passes}{lap}; path {Amounts.Print(plan.Path, decimals: 0)}";
    }

    private static string Apart(FieldPasses plan) =>
        plan.Passes.Length == 1 ? "" : $" {Amounts.Print(plan.Spacing, decimals: 1)} apart";

    /// <summary>Ground that nothing reaches is hatched: passes and lap are laid over the hatching as far as they reach.</summary>
    private static void DrawGround(
        SvgSheet sheet,
        FieldPasses plan,
        Func<PlanePoint, (double X, double Y)> at,
        double pixelsPerFoot
    )
    {
        double half = plan.Spacing.Feet / 2;
        bool isMissing = plan.Ground.Missed > 0;
        if (isMissing)
        {
            sheet.Polygon(plan.Outline.Corners.Select(at), sheet.Hatching(), 0, stroke: "none");
        }

        foreach (var pass in plan.Passes.Where(p => isMissing || p.Strip % 2 == 1))
        {
            double length = Math.Max(pass.LengthFeet, double.Epsilon);
            double east = -(pass.End.NorthFeet - pass.Start.NorthFeet) / length * half,
                north = (pass.End.EastFeet - pass.Start.EastFeet) / length * half;
            PlanePoint Beside(PlanePoint p, int side) =>
                PlanePoint.FromFeet(p.EastFeet + side * east, p.NorthFeet + side * north);
            sheet.Polygon(
                new[] { Beside(pass.Start, 1), Beside(pass.End, 1), Beside(pass.End, -1), Beside(pass.Start, -1) }.Select(at),
                pass.Strip % 2 == 1 ? StripGrey : "white",
                0,
                stroke: "none",
                clip: OutlineClip
            );
        }

        foreach (var lap in plan.Lap)
        {
            sheet.Polygon(
                lap.Corners.Select(at),
                thickness: plan.Request.SwathFeet * pixelsPerFoot,
                stroke: LapGrey,
                clip: OutlineClip
            );
        }

        foreach (var lap in plan.Lap)
        {
            sheet.Polygon(lap.Corners.Select(at), thickness: 1.4, dash: "7 4");
        }

        sheet.Polygon(plan.Outline.Corners.Select(at), thickness: 2.4);
    }

    private static void DrawPasses(
        SvgSheet sheet,
        FieldPasses plan,
        Func<PlanePoint, (double X, double Y)> at,
        double pixelsPerFoot
    )
    {
        int every = (plan.Passes.Length + MostNumbers - 1) / MostNumbers;
        double spacingPixels = plan.Spacing.Feet * pixelsPerFoot;
        double numberSize = Math.Clamp(spacingPixels * every * 1.3, 7, 12);
        foreach (var pass in plan.Passes)
        {
            var (x1, y1) = at(pass.Start);
            var (x2, y2) = at(pass.End);
            sheet.Segment(x1, y1, x2, y2, 0.9);
            double length = Math.Sqrt((x2 - x1) * (x2 - x1) + (y2 - y1) * (y2 - y1));
            if (length > 12)
            {
                sheet.Arrowhead((x1 + x2) / 2, (y1 + y2) / 2, x2 - x1, y2 - y1, Math.Clamp(spacingPixels / 3, 2.5, 5));
            }

            bool between = pass.Number % every == 0 && plan.Passes.Length - pass.Number >= every;
            if (pass.Number == 1 || pass.Number == plan.Passes.Length || between)
            {
                // The number stands before the start, outside the line.
                double back = 4 + numberSize * 0.55;
                double x = x1 - (x2 - x1) / length * back,
                    y = y1 - (y2 - y1) / length * back + numberSize * 0.35;
                sheet.Text(
                    x,
                    y,
                    pass.Number.ToString(CultureInfo.InvariantCulture),
                    "middle",
                    numberSize,
                    pass.Number == 1,
                    halo: true
                );
            }
        }
    }

    private static void DrawLegend(SvgSheet sheet, FieldPasses plan, double y, double pixelsPerFoot)
    {
        double feet = SvgSheet.RoundLength(200 / pixelsPerFoot);
        sheet.ScaleBar(Margin, y, feet * pixelsPerFoot, "0", Amounts.Print(Length.FromFeet(feet), decimals: 1));
        double x = Margin + 250;
        sheet.Segment(x, y + 3, x + 30, y + 3, 2.4);
        sheet.Text(x + 38, y + 7, "edge of the plot", size: 12);
        sheet.Segment(x, y + 25, x + 30, y + 25, 0.9);
        sheet.Arrowhead(x + 19, y + 25, 1, 0, 4);
        sheet.Text(x + 38, y + 29, "pass, gate open; its number at the start", size: 12);
        if (!plan.Lap.IsEmpty)
        {
            sheet.Polygon([(x, y + 38), (x + 30, y + 38), (x + 30, y + 50), (x, y + 50)], LapGrey, 0, stroke: "none");
            sheet.Segment(x, y + 44, x + 30, y + 44, 1.4, "7 4");
            sheet.Text(x + 38, y + 48, "headland lap, driven first; hatched: by hand", size: 12);
        }

        double arrow = Width - Margin - 60;
        sheet.Segment(arrow, y + 34, arrow, y - 8, 1.4);
        sheet.Arrowhead(arrow, y - 12, 0, -1, 5);
        sheet.Text(arrow + 10, y + 8, "N", size: 15, bold: true);
        sheet.Text(arrow, y + 50, plan.Outline.Origin is null ? "north of the plan" : "north", "middle", 11);
    }
}
