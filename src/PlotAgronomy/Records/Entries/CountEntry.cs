using System.Collections.Immutable;
using System.Text;
using UnitsNet;

namespace PlotAgronomy.Records;

/// <summary>Plants counted in hoops thrown at random.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed record CountEntry : BookEntry
{
    internal const string Word = "count";

    private readonly double squareFeet;

    /// <summary>Gets the kind that was counted; null for every plant that was sown.</summary>
    public CropKind? Kind { get; init; }

    /// <summary>Gets the ground inside the hoop.</summary>
    public required Area Hoop
    {
        get => Area.FromSquareFeet(squareFeet);
        init => squareFeet = Guard.Positive(value, nameof(Hoop)).SquareFeet;
    }

    /// <summary>Gets the plants in each hoop.</summary>
    public required ImmutableArray<int> Plants
    {
        get;
        init =>
            field =
                !value.IsDefaultOrEmpty && value.All(n => n >= 0)
                    ? value
                    : throw new ArgumentException("Must hold at least one hoop, and no count below 0.", nameof(Plants));
    }

    internal override string What => Word;

    internal double SquareFeet => squareFeet;

    /// <inheritdoc/>
    protected override bool PrintMembers(StringBuilder builder) => base.PrintMembers(builder);

    internal override void Write(FieldWriter to)
    {
        to.Text("kind", Kind?.Id);
        to.Quantity("hoop", squareFeet, "ft2");
        to.List("plants", Plants.Select(n => ExactText.Of(n)));
    }

    internal static CountEntry Read(FieldReader from, DateOnly on, string plot) =>
        new()
        {
            On = on,
            Plot = plot,
            Kind = from.KindOrNull("kind"),
            Hoop = Area.FromSquareFeet(from.Quantity("hoop", "ft2")),
            Plants = Whole.List(from, "plants"),
        };
}
