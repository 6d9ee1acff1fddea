using System.Text;
using PlotAgronomy.Columns;
using PlotAgronomy.Land;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Records;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Tests.Fuzz;

/// <summary>A reader of text with what it documents to throw.</summary>
/// <param name="Corpus">File of its corpus: one text, or one a line; or a folder.</param>
/// <param name="Read">Reads a text, and uses what was read.</param>
/// <param name="Documented">Exceptions it documents; none for a reader that never throws.</param>
internal sealed record FuzzedReader(string Corpus, Action<string> Read, params Type[] Documented)
{
    private const string Name = "fuzzed";

    private static readonly ReportColumn[] Columns =
    [
        ReportColumn.Sample("Sample"), ReportColumn.WaterPh("pH"), ReportColumn.BufferPh("SMP", SoilBuffer.Smp), ReportColumn.OrganicMatter("OM"), ReportColumn.Crop("Crop"),
        ReportColumn.Reading("P", SoilAnalyte.Phosphorus, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3),
        ReportColumn.Reading("K", SoilAnalyte.Potassium, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3),
        ReportColumn.ExchangeCapacity("CEC"), ReportColumn.SoilClass("Class"),
    ];

    private static readonly ReportRequest Asked = new() { LimeMethod = LimeMethod.Find("smp-1961"), TargetPh = 6.5, System = RecommendationSystem.Find("TS-2020"), Crop = CropRow.Clover };

    internal static FuzzedReader[] All { get; } =
    [
        new("amounts.txt", Amounted),
        new("words.txt", Named),
        new("tag.txt", t => _ = SeedTag.Read(t).ToString()),
        new("outline.geojson", Outlined, typeof(DataFormatException)),
        new("outline.gpx", Outlined, typeof(DataFormatException)),
        new("outline.list", Outlined, typeof(DataFormatException)),
        new("forecast.table", t => _ = WeatherForecast.Read(t, Name, TimeZoneInfo.Utc).ToString(), typeof(DataFormatException)),
        new("grid.json", t => _ = WeatherForecast.ReadGrid(t, Name).Blocks.Length, typeof(DataFormatException)),
        new("periods.json", t => _ = WeatherForecast.ReadPeriods(t, Name).Blocks.Length, typeof(DataFormatException)),
        new("point.json", t => _ = ForecastPoint.Read(t, Name).ToString(), typeof(DataFormatException)),
        new("station.csv", t => _ = WeatherHistory.ReadStation(t, Name).ToString(), typeof(DataFormatException)),
        new("book.jsonl", Booked),
        new("reports.table", Tabled, typeof(DataFormatException)),
        new("plans", t => _ = PlanFile.Read(t).ToString()),
    ];

    internal IReadOnlyList<string> Texts
    {
        get
        {
            string path = Repository.PathOf($"tests/PlotAgronomy.Tests/Fuzz/corpus/{Corpus}");
            return Corpus switch
            {
                "amounts.txt" or "words.txt" => File.ReadAllLines(path),
                "plans" => [File.ReadAllText(Repository.PathOf("samples/data/printed-rate.json")), .. Directory.GetFiles(path).Order(StringComparer.Ordinal).Select(File.ReadAllText)],
                _ => [File.ReadAllText(path)],
            };
        }
    }

    /// <summary>What went wrong; null where it was read or refused as documented.</summary>
    internal string? Try(string text)
    {
        try
        {
            Read(text);
            return null;
        }
        catch (Exception thrown) when (!Documented.Contains(thrown.GetType()))
        {
            return $"{thrown.GetType().Name}: {thrown.Message}";
        }
        catch (Exception documented)
        {
            return documented.Message.StartsWith($"{Name}, line ", StringComparison.Ordinal) ? null : $"names no place: {documented.Message}";
        }
    }

    private static void Amounted(string text)
    {
        _ = Amounts.TryReadArea(text, out Area _, out _) | Amounts.TryReadMass(text, out Mass _, out _) | Amounts.TryReadLength(text, out Length _, out _);
        _ = Amounts.TryReadVolume(text, out Volume _, out _) | Amounts.TryReadDensity(text, out Density _, out _) | Amounts.TryReadRate(text, out var rate, out _);
        _ = Amounts.TryReadSpeed(text, out Speed _, out _) | Amounts.TryReadFlow(text, out MassFlow _, out _) | Amounts.TryReadDuration(text, out TimeSpan _, out _);
        _ = Amounts.TryReadPercent(text, out var share, out _);
        _ = rate.ToString() + share;
    }

    private static void Named(string text)
    {
        _ = KindCatalog.Standard.TryFind(text, out _, out _) | Institution.TryFind(text, out _, out _) | Place.TryFind(text, out _, out _);
        _ = CropRows.TryFind(text, out _, out _) | FertilizerAnalysis.TryRead(text, out _, out _) | LimeMethod.TryFind(text, out _, out _);
        _ = SoilRegion.TryFind(text, out _, out _) | RecommendationSystem.TryFind(text, out _, out _) | PlantingRegion.TryFind(text, out _, out _);
    }

    private static void Outlined(string text)
    {
        foreach (var outline in PlotOutline.Read(text, Name))
        {
            _ = outline.ToString() + outline.Findings.Length;
        }
    }

    private static void Booked(string text)
    {
        var book = PlotBook.Read(new MemoryStream(Encoding.UTF8.GetBytes(text)), Name);
        _ = book.ToString() + string.Concat(book.Findings.Select(f => f.Text)) + book.ToCsv().Length;
    }

    private static void Tabled(string text)
    {
        var table = ReportTable.Read(text, Name, Columns);
        _ = ReportAnswers.For(table, Asked).ToCsv() + string.Concat(table.Problems);
    }
}
