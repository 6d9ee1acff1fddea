using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>How one institution reports soil tests: extractants, units, and depth where it states one.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SoilProgram
{
    private static readonly Table<SoilProgram> Table = new("Soil/Data/programs.csv", row => new SoilProgram(row));

    private readonly string? unless;

    private SoilProgram(CsvRow row)
    {
        Institution = row.Institution();
        unless = row.TextOrNull("unless");
        PhosphorusExtractants = row.Choices<Extractant>("phosphorus_extractants");
        CationExtractants = row.Choices<Extractant>("cation_extractants");
        Units = row.Choices<SoilTestUnit>("units");
        SampledDepthInches = row.NumberOrNull("sampled_depth_in");
        Origin = row.Origin();
    }

    /// <summary>Gets every program known.</summary>
    public static ImmutableArray<SoilProgram> All => Table.Rows;

    /// <summary>Gets the institution.</summary>
    public Institution Institution { get; }

    /// <summary>Gets the extractants it uses for phosphorus.</summary>
    public ImmutableArray<Extractant> PhosphorusExtractants { get; }

    /// <summary>Gets the extractants it uses for K, Ca and Mg.</summary>
    public ImmutableArray<Extractant> CationExtractants { get; }

    /// <summary>Gets the units it prints P and K in.</summary>
    public ImmutableArray<SoilTestUnit> Units { get; }

    internal double? SampledDepthInches { get; }

    /// <summary>Gets where it stands and how well that is known.</summary>
    public Origin Origin { get; }

    /// <summary>Finds the program of the institution that a laboratory's or program's name holds as whole words.</summary>
    /// <param name="laboratory">Name as on the report, such as <c>North Carolina</c>
    /// or <c>the Oklahoma state laboratory</c>.</param>
    /// <returns>The program, or null when it is not in the table.</returns>
    public static SoilProgram? FindIn(string laboratory)
    {
        ArgumentNullException.ThrowIfNull(laboratory);
        return All.Where(p => !(p.unless is { } other && WholeWords.Hold(laboratory, other)))
            .Where(p => p.Institution.LongestNameIn(laboratory) > 0)
            .MaxBy(p => p.Institution.LongestNameIn(laboratory));
    }

    /// <summary>The program of a report: the one it names, else its laboratory's.</summary>
    /// <param name="report">Report.</param>
    /// <returns>The program, or null when it is not in the table.</returns>
    public static SoilProgram? For(SoilReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return FindIn(report.Program ?? report.Laboratory);
    }

    /// <summary>The institution's short name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Institution.Name;

    internal ImmutableArray<Extractant> ExtractantsFor(SoilAnalyte analyte) =>
        analyte switch
        {
            SoilAnalyte.Phosphorus => PhosphorusExtractants,
            SoilAnalyte.Potassium or SoilAnalyte.Calcium or SoilAnalyte.Magnesium => CationExtractants,
            _ => [],
        };

    /// <summary>A Mehlich-3 reading stays one however it was measured.</summary>
    internal bool Uses(SoilAnalyte analyte, Extractant extractant)
    {
        var used = ExtractantsFor(analyte);
        return used.Contains(extractant)
            || (used.Contains(Extractant.Mehlich3) && extractant is (Extractant.Mehlich3Icp or Extractant.Mehlich3Colorimetric))
            || (
                extractant == Extractant.Mehlich3 && used.Any(e => e is Extractant.Mehlich3Icp or Extractant.Mehlich3Colorimetric)
            );
    }
}
