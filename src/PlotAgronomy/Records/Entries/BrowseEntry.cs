using System.Collections.Immutable;

namespace PlotAgronomy.Records;

/// <summary>Browse seen on plants: how many stand in each class of use.</summary>
/// <remarks>The classes are none, about 10, 30, 50, 70 and 90 % eaten.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed record BrowseEntry : BookEntry
{
    internal const string Word = "browse";
    internal const int Classes = 6;

    /// <summary>Gets the kind; null for the whole plot.</summary>
    public CropKind? Kind { get; init; }

    /// <summary>Gets the plants in each of the six classes, from untouched to nearly all eaten.</summary>
    public required ImmutableArray<int> PlantsByClass
    {
        get;
        init =>
            field =
                !value.IsDefault && value.Length == Classes && value.All(n => n >= 0) && value.Sum() > 0
                    ? value
                    : throw new ArgumentException("Must hold six counts, none below 0 and not all 0.", nameof(PlantsByClass));
    }

    internal override string What => Word;

    internal override void Write(FieldWriter to)
    {
        to.Text("kind", Kind?.Id);
        to.List("plants-by-class", PlantsByClass.Select(n => ExactText.Of(n)));
    }

    internal static BrowseEntry Read(FieldReader from, DateOnly on, string plot) =>
        new()
        {
            On = on,
            Plot = plot,
            Kind = from.KindOrNull("kind"),
            PlantsByClass = Whole.List(from, "plants-by-class"),
        };
}
