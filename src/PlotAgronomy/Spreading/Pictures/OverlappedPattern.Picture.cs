namespace PlotAgronomy.Spreading;

/// <content>The pattern as a picture.</content>
public sealed partial class OverlappedPattern
{
    /// <summary>Draws two passes' width as an SVG sheet to print in black and white: what each pass throws, what lies on the
    /// ground, its mean and its limits.</summary>
    /// <param name="limitPercent">Coefficient of variation whose band is drawn about the mean, in percent; above 0. Null takes 15
    /// %.</param>
    /// <returns>The text of an SVG file.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The limit is outside its range.</exception>
    public string ToSvg(double? limitPercent = null) => PatternPicture.Draw(this, limitPercent);
}
