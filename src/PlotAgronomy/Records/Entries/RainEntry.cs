using System.Text;
using UnitsNet;

namespace PlotAgronomy.Records;

/// <summary>Rain by a gauge: what fell in the days up to the date of the entry.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed record RainEntry : BookEntry
{
    internal const string Word = "rain";

    private readonly double inches;

    /// <summary>Gets what fell.</summary>
    public required Length Amount
    {
        get => Length.FromInches(inches);
        init
        {
            double given = value.Inches;
            inches = Guard.Between(given, 0, RecordConstants.All["most-rain"], "in", nameof(Amount));
        }
    }

    /// <summary>Gets the days it fell in, the date of the entry the last of them.</summary>
    /// <value>One day.</value>
    public int Days
    {
        get;
        init => field = Guard.AtLeast(value, 1, "days", nameof(Days));
    } = 1;

    internal override string What => Word;

    /// <inheritdoc/>
    protected override bool PrintMembers(StringBuilder builder) => base.PrintMembers(builder);

    internal override void Write(FieldWriter to)
    {
        to.Quantity("rain", inches, "in");
        to.Number("days", Days);
    }

    internal static RainEntry Read(FieldReader from, DateOnly on, string plot) =>
        new()
        {
            On = on,
            Plot = plot,
            Amount = Length.FromInches(from.Quantity("rain", "in")),
            Days = from.WholeOrNull("days") ?? 1,
        };
}
