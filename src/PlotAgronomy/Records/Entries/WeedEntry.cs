namespace PlotAgronomy.Records;

/// <summary>Weeds or pests that were seen.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed record WeedEntry : BookEntry
{
    internal const string Word = "weeds";

    /// <summary>Gets what was seen, in one's own words.</summary>
    public required string Seen
    {
        get;
        init => field = Guard.NotBlank(value, nameof(Seen));
    }

    /// <summary>Gets the part of the ground it covers; null where it was not judged.</summary>
    public Fraction? Cover { get; init; }

    internal override string What => Word;

    internal override void Write(FieldWriter to)
    {
        to.Text("seen", Seen);
        to.Value("cover", Cover);
    }

    internal static WeedEntry Read(FieldReader from, DateOnly on, string plot) =>
        new()
        {
            On = on,
            Plot = plot,
            Seen = from.Text("seen"),
            Cover = from.ValueOrNull<Fraction>("cover"),
        };
}
