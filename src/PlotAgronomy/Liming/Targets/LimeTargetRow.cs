using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>One row of the table of target pHs.</summary>
internal sealed class LimeTargetRow
{
    private static readonly Table<LimeTargetRow> Rows = new("Liming/Data/targets.csv", r => new LimeTargetRow(r));

    private readonly ImmutableHashSet<string> kinds;
    private readonly ImmutableArray<SoilClass> soils;
    private readonly string acidSubsoil;

    private LimeTargetRow(CsvRow row)
    {
        Institution = row.Institution();
        kinds = [.. row.List("kinds")];
        soils = row.Choices<SoilClass>("soils");
        acidSubsoil = row.Text("acid_subsoil");
        TargetPh = row.NumberOrNull("target_ph");
        LowestPh = row.NumberOrNull("ph_low");
        HighestPh = row.NumberOrNull("ph_high");
        Origin = row.Origin();
    }

    internal static ImmutableArray<LimeTargetRow> All => Rows.Rows;

    internal Institution Institution { get; }

    internal IEnumerable<string> Kinds => kinds;

    internal double? TargetPh { get; }

    internal double? LowestPh { get; }

    internal double? HighestPh { get; }

    internal string RangeInWords =>
        HighestPh is { } highest
            ? $"a range of pH {LimeText.Ph(LowestPh!.Value)} to {LimeText.Ph(highest)}"
            : $"a lowest pH of {LimeText.Ph(LowestPh!.Value)}";

    internal Origin Origin { get; }

    internal DataStatus Status => Origin.Status;

    /// <summary>The first row of an institution for this kind, soil and subsoil, or null.</summary>
    internal static LimeTargetRow? FindForInstitution(Institution institution, string kindId, SoilClass soil, bool hasAcidSubsoil)
    {
        string subsoil = hasAcidSubsoil ? "yes" : "no";
        foreach (var row in All)
        {
            if (
                row.Institution == institution
                && row.kinds.Contains(kindId)
                && row.soils.Contains(soil)
                && (row.acidSubsoil == "any" || row.acidSubsoil == subsoil)
            )
            {
                return row;
            }
        }

        return null;
    }
}
