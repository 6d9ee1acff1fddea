using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>A published factor from one extractant to another. It is used only when named, and always leaves a finding.</summary>
public sealed class ExtractantConversion
{
    private static readonly Lazy<ImmutableArray<ExtractantConversion>> Table = new(Load);

    private static readonly Lazy<ImmutableArray<(SoilAnalyte Analyte, Extractant From, Extractant To, string Reason)>> Refusals =
        new(LoadRefusals);

    private ExtractantConversion(CsvRow row)
    {
        Id = row.Text("id");
        Title = row.Text("title");
        Analyte = row.Choice<SoilAnalyte>("analyte");
        From = row.Choice<Extractant>("from");
        To = row.Choice<Extractant>("to");
        Factor = row.Number("factor");
        Trust = row.Text("trust");
        SourceId = row.SourceId();
        Status = row.Status();
    }

    /// <summary>Gets every published conversion.</summary>
    public static ImmutableArray<ExtractantConversion> All => Table.Value;

    /// <summary>Gets the name to ask for.</summary>
    public string Id { get; }

    /// <summary>Gets the conversion in words.</summary>
    public string Title { get; }

    /// <summary>Gets the nutrient.</summary>
    public SoilAnalyte Analyte { get; }

    /// <summary>Gets the extractant of the reading.</summary>
    public Extractant From { get; }

    /// <summary>Gets the extractant of the answer.</summary>
    public Extractant To { get; }

    /// <summary>Gets the factor, a pure number.</summary>
    public double Factor { get; }

    /// <summary>Gets where it holds, in words.</summary>
    public string Trust { get; }

    /// <summary>Gets the id of the source.</summary>
    public string SourceId { get; }

    /// <summary>Gets how well the factor is known.</summary>
    public DataStatus Status { get; }

    /// <summary>Finds a conversion by its name.</summary>
    /// <param name="id">Name such as <c>tri-state-bray-to-mehlich3</c>.</param>
    /// <returns>The conversion.</returns>
    /// <exception cref="KeyNotFoundException">No conversion has this name.</exception>
    public static ExtractantConversion Named(string id) =>
        All.FirstOrDefault(c => c.Id == id)
        ?? throw new KeyNotFoundException(
            $"No extractant conversion is named '{id}'; there are {string.Join(", ", All.Select(c => c.Id))}."
        );

    /// <summary>Lists the published conversions between two extractants; empty when there is none.</summary>
    /// <param name="analyte">Nutrient.</param>
    /// <param name="from">Extractant of the reading.</param>
    /// <param name="to">Extractant wanted.</param>
    /// <returns>The conversions.</returns>
    public static ImmutableArray<ExtractantConversion> Between(SoilAnalyte analyte, Extractant from, Extractant to) =>
        [.. All.Where(c => c.Analyte == analyte && c.From == from && c.To == to)];

    /// <summary>Says why there is no conversion between two extractants, in either direction, when research has shown that there is none.</summary>
    /// <param name="analyte">Nutrient.</param>
    /// <param name="from">Extractant of the reading.</param>
    /// <param name="to">Extractant wanted.</param>
    /// <returns>The finding, or null when nothing is known against it.</returns>
    public static Finding? ReasonAgainst(SoilAnalyte analyte, Extractant from, Extractant to)
    {
        foreach (var (refusedAnalyte, a, b, reason) in Refusals.Value)
        {
            if (refusedAnalyte == analyte && ((a == from && b == to) || (a == to && b == from)))
            {
                return FindingCatalog.Create(
                    "soil-extractant-no-equation",
                    ("analyte", analyte.ToString()),
                    ("from", SoilWords.For(from)),
                    ("to", SoilWords.For(to)),
                    ("reason", reason)
                );
            }
        }

        return null;
    }

    /// <summary>Converts a reading, keeping the original beside it.</summary>
    /// <param name="reading">Reading by <see cref="From"/>, in a unit of concentration or of mass per area (not an index).</param>
    /// <returns>The reading by <see cref="To"/>, with the finding.</returns>
    /// <exception cref="ArgumentException">Another nutrient or extractant, or an index.</exception>
    public ReadingConversion Convert(SoilReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        if (reading.Analyte != Analyte || reading.Extractant != From)
        {
            throw new ArgumentException($"'{Id}' takes {Analyte} by {SoilWords.For(From)}, not {reading}.", nameof(reading));
        }

        if (SoilWords.IsIndex(reading.Unit) || reading.Unit == SoilTestUnit.PercentSaturation)
        {
            throw new ArgumentException(
                $"'{Id}' takes a concentration or lb/ac, not {SoilWords.For(reading.Unit)}: convert the unit first.",
                nameof(reading)
            );
        }

        double value = reading.PrintedValue * Factor;
        var converted = SoilReading.Of(Analyte, value, reading.Unit, To, reading.Form);
        var step = new ConversionStep(
            Title,
            FormattableString.Invariant($"reading x {Factor:0.###}"),
            reading.PrintedValue,
            value,
            SourceId
        );
        return new ReadingConversion(
            reading,
            converted,
            [step],
            [
                FindingCatalog.Create(
                    "soil-extractant-converted",
                    ("analyte", Analyte.ToString()),
                    ("from", SoilWords.For(From)),
                    ("to", SoilWords.For(To)),
                    ("method", Title),
                    ("trust", Trust)
                ),
            ]
        );
    }

    /// <summary>Text such as <c>Bray P-1 to Mehlich-3, Ohio and Indiana</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Title;

    private static ImmutableArray<ExtractantConversion> Load() =>
        [
            .. CsvTable
                .Embedded(
                    "Soil/Data/extractant-conversions.csv",
                    "id",
                    "title",
                    "analyte",
                    "from",
                    "to",
                    "factor",
                    "trust",
                    "source_id",
                    "locator",
                    "status"
                )
                .Rows.Select(r => new ExtractantConversion(r)),
        ];

    private static ImmutableArray<(SoilAnalyte, Extractant, Extractant, string)> LoadRefusals() =>
        [
            .. CsvTable
                .Embedded(
                    "Soil/Data/extractant-refusals.csv",
                    "id",
                    "analyte",
                    "from",
                    "to",
                    "reason",
                    "source_id",
                    "locator",
                    "status"
                )
                .Rows.Select(r =>
                    (r.Choice<SoilAnalyte>("analyte"), r.Choice<Extractant>("from"), r.Choice<Extractant>("to"), r.Text("reason"))
                ),
        ];
}
