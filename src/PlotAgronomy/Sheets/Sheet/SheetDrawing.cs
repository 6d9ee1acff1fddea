namespace PlotAgronomy.Sheets;

/// <summary>A drawing in black and white, for pages that can show one; where a page cannot, its caption says the same.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SheetDrawing : SheetBlock
{
    /// <summary>Gets the drawing as the text of an SVG file.</summary>
    public required string Svg
    {
        get;
        init => field = Guard.NotNull(value, nameof(Svg));
    }

    /// <summary>Gets what it shows, in a sentence.</summary>
    public required string Caption
    {
        get;
        init => field = Guard.NotNull(value, nameof(Caption));
    }

    /// <summary>What it shows.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Caption;
}
