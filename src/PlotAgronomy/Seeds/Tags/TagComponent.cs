namespace PlotAgronomy.Seeds;

/// <summary>One kind named on a tag with its analysis.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class TagComponent
{
    /// <summary>Gets the kind.</summary>
    public required CropKind Kind
    {
        get;
        init => field = Guard.NotNull(value, nameof(Kind));
    }

    /// <summary>Gets the analysis; its pure seed is a part of the whole bag.</summary>
    public required SeedAnalysis Analysis
    {
        get;
        init => field = Guard.NotNull(value, nameof(Analysis));
    }

    /// <summary>Gets the variety as printed, or null when it is not stated.</summary>
    public string? Variety { get; init; }

    /// <summary>Gets the origin, or null.</summary>
    public string? Origin { get; init; }

    /// <summary>Gets the month of the germination test, or null when the tag gives none for this kind alone.</summary>
    public TestMonth? TestMonth { get; init; }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Kind.ShortName}: {Analysis.PureSeed}";
}
