using UnitsNet;

namespace PlotAgronomy.Land;

/// <content>Strips along the edge of an outline that stay unsown.</content>
public sealed partial class PlotOutline
{
    /// <summary>What is left when a strip along every side stays unsown: edge, roots or shade.</summary>
    /// <param name="strip">Width of the strip; finite, at least 0.</param>
    /// <returns>The inside, which may be nothing or several parts, and the strip.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    /// <exception cref="InvalidOperationException">The corners lie too close together for such a strip.</exception>
    /// <remarks>Every place nearer than the strip's width to a side is left out. A convex outline whose sides all
    /// remain keeps A - P e + e2 x sum of cot(corner / 2).</remarks>
    public EdgeStrip Inset(Length strip)
    {
        double stripFeet = strip.Feet;
        Guard.AtLeast(stripFeet, 0, "ft", nameof(strip));
        return new EdgeStrip(this, stripFeet, [.. RingInset.Find(Corners, stripFeet).Select(Part)]);
    }

    /// <summary>What is left when a strip along one straight side stays unsown, such
    /// as the shade of timber on the south.</summary>
    /// <param name="strip">Width of the strip; finite, at least 0.</param>
    /// <param name="side">Number of the side: side 1 runs from the first corner to the second, counter-clockwise.</param>
    /// <returns>The inside and the strip.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <exception cref="InvalidOperationException">The outline has a corner that points inwards: split it first.</exception>
    public EdgeStrip InsetAlong(Length strip, int side)
    {
        double stripFeet = strip.Feet;
        Guard.AtLeast(stripFeet, 0, "ft", nameof(strip));
        Guard.Between(side, 1, Corners.Length, "(the number of a side)");
        var left = IsConvex
            ? RingInset.CutAlong(Corners, side - 1, stripFeet)
            : throw new InvalidOperationException(
                "A strip along one side needs an outline without inward corners: split the plot there."
            );
        return new EdgeStrip(this, stripFeet, left is { } ring ? [Part(ring)] : []);
    }
}
