using PlotAgronomy.Land;

namespace PlotAgronomy;

/// <content>Plots by the name of their form.</content>
public sealed partial class PlotArea
{
    /// <summary>The area of a form with its sides in their order.</summary>
    internal static PlotArea FromSides(PlotForm form, params ReadOnlySpan<MeasuredLength> sides) =>
        form switch
        {
            PlotForm.Rectangle => FromRectangle(sides[0], sides[1]),
            PlotForm.Triangle => FromThreeSides(sides[0], sides[1], sides[2]),
            PlotForm.Trapezoid => FromTrapezoid(sides[0], sides[1], sides[2]),
            PlotForm.Circle => FromCircle(sides[0]),
            PlotForm.LShape => FromLShape(sides[0], sides[1], sides[2], sides[3]),
            _ => FromSidesAndDiagonals(
                [.. sides[..((sides.Length + 3) / 2)]],
                (IReadOnlyList<MeasuredLength>)[.. sides[((sides.Length + 3) / 2)..]]
            ),
        };
}
