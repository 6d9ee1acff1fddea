using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>Cold a kind stands.</summary>
public sealed class Hardiness
{
    /// <summary>Gets what the limit means.</summary>
    public required ColdLimitKind Kind { get; init; }

    /// <summary>Gets the colder end of the limit, air temperature; null when the kind normally overwinters.</summary>
    public Temperature? LimitFrom { get; init; }

    /// <summary>Gets the milder end of the limit, air temperature; null when the kind normally overwinters.</summary>
    public Temperature? LimitTo { get; init; }

    /// <summary>Gets the hardiness in words.</summary>
    public required string Note { get; init; }

    /// <summary>Gets the sources.</summary>
    public required KindEvidence Evidence { get; init; }

    internal static Hardiness FromRow(CsvRow row) =>
        new()
        {
            Kind = row.Choice<ColdLimitKind>("limit_kind"),
            LimitFrom = Degrees(row.NumberOrNull("cold_limit_low_f")),
            LimitTo = Degrees(row.NumberOrNull("cold_limit_high_f")),
            Note = row.Text("note"),
            Evidence = KindEvidence.FromRow(row),
        };

    private static Temperature? Degrees(double? fahrenheit) => fahrenheit is { } f ? Temperature.FromDegreesFahrenheit(f) : null;
}
