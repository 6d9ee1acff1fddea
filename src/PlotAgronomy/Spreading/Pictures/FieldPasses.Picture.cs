namespace PlotAgronomy.Spreading;

/// <content>The passes as a picture.</content>
public sealed partial class FieldPasses
{
    /// <summary>Draws the passes as an SVG sheet to print in black and white: outline, strips, passes with their direction,
    /// headland lap, scale bar and north.</summary>
    /// <returns>The text of an SVG file.</returns>
    public string ToSvg() => PlotPicture.Draw(this);
}
