using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>How a rule splits the season's nitrogen into dressings; no parts where it prints none.</summary>
internal sealed class NitrogenSplit
{
    private static readonly Lazy<ILookup<string, Part>> Parts = Table.Grouped(
        "Nutrients/Data/nitrogen-doses.csv",
        r => r.Text("rule_id"),
        Part.FromRow
    );

    private readonly ImmutableArray<Part> parts;

    private NitrogenSplit(ImmutableArray<Part> parts) => this.parts = parts;

    internal static NitrogenSplit Of(string ruleId) => new([.. Parts.Value[ruleId].OrderBy(p => p.Order)]);

    internal ImmutableArray<NitrogenDose> Of(double lowPounds, double highPounds)
    {
        if (highPounds <= 0)
        {
            return [];
        }

        var doses = ImmutableArray.CreateBuilder<NitrogenDose>();
        double lowLeft = lowPounds;
        double highLeft = highPounds;
        foreach (var part in parts)
        {
            double low = NitrogenMath.DosePounds(part.Size, lowPounds, lowLeft);
            double high = NitrogenMath.DosePounds(part.Size, highPounds, highLeft);
            lowLeft -= low;
            highLeft -= high;
            doses.Add(
                new NitrogenDose(
                    ApplicationRate.FromPoundsPerAcre(low),
                    ApplicationRate.FromPoundsPerAcre(high),
                    part.Time,
                    part.When,
                    part.Source
                )
            );
        }

        return doses.ToImmutable();
    }

    private sealed record Part(int Order, string Size, DressingTime Time, string When, Source Source)
    {
        internal static Part FromRow(CsvRow row)
        {
            string size = row.Text("size");
            return
                size is "half" or "rest"
                || double.TryParse(size, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _)
                ? new(row.Integer("part"), size, row.Choice<DressingTime>("time"), row.Text("when"), row.Source())
                : throw row.Problem("size", $"expected half, rest or pounds per acre, found '{size}'");
        }
    }
}
