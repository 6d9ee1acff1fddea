using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Weather;

/// <content>Reads forecasts from documents of the US National Weather Service, and tells the place they are for. Nothing is
/// fetched.</content>
public sealed partial class WeatherForecast
{
    private static double LongestDays => WeatherConstants.All["longest-forecast"];

    /// <summary>Gets the middle of the ground that the document is for; null where it does not tell.</summary>
    public GeoPoint? Place { get; init; }

    /// <summary>Reads a raw grid forecast.</summary>
    /// <param name="text">Text of the document.</param>
    /// <param name="fileName">Name used in messages.</param>
    /// <returns>The forecast.</returns>
    /// <exception cref="DataFormatException">The text is no such document: the message names file, line and field.</exception>
    public static WeatherForecast ReadGrid(string text, string fileName)
    {
        var document = WeatherJson.Document(WeatherText.Checked(text, fileName), fileName);
        var fields = document.Properties;
        var issued = fields.Need("updateTime").Moment();
        var rain = GridLayer.Rain.Read(fields, fileName, issued);
        var chance = GridLayer.Chance.Read(fields, fileName, issued);
        SlotSeries[] others =
        [
            GridLayer.High.Read(fields, fileName, issued),
            GridLayer.Low.Read(fields, fileName, issued),
            GridLayer.Temperature.Read(fields, fileName, issued),
            GridLayer.DewPoint.Read(fields, fileName, issued),
            GridLayer.Humidity.Read(fields, fileName, issued),
            GridLayer.Wind.Read(fields, fileName, issued),
        ];
        CheckSpan([rain, chance, .. others], fields);
        return new()
        {
            FileName = fileName,
            Issued = issued,
            Elevation = ElevationOf(fields),
            Place = DocumentPlace.Of(document),
            Blocks = RainBlocks.Cut(rain, chance),
            High = others[0],
            Low = others[1],
            Hourly = others[2],
            DewPoint = others[3],
            Humidity = others[4],
            Wind = others[5],
        };
    }

    /// <summary>Reads a raw grid forecast from a stream, which stays open.</summary>
    /// <param name="stream">The document in UTF-8.</param>
    /// <param name="fileName">Name used in messages.</param>
    /// <returns>The forecast.</returns>
    /// <exception cref="DataFormatException">The stream holds no such document.</exception>
    public static WeatherForecast ReadGrid(Stream stream, string fileName) =>
        ReadGrid(WeatherText.Read(stream, fileName), fileName);

    /// <summary>Reads the forecast by half days or by hours.</summary>
    /// <param name="text">Text of the document.</param>
    /// <param name="fileName">Name used in messages.</param>
    /// <returns>The forecast; it tells chances and temperatures, and no amounts of rain.</returns>
    /// <exception cref="DataFormatException">The text is no such document: the message names file, line and field.</exception>
    public static WeatherForecast ReadPeriods(string text, string fileName)
    {
        var document = WeatherJson.Document(WeatherText.Checked(text, fileName), fileName);
        var fields = document.Properties;
        ImmutableArray<ForecastPeriod> periods = [.. fields.Need("periods").Items().Select(ForecastPeriod.Read)];
        if (periods.IsEmpty)
        {
            throw fields.Need("periods").Problem("holds no period");
        }

        var slots = SlotSeries.From(periods.Select(p => new SlotValue(p.Slot, 0, p.Line)), fileName, "periods");
        CheckSpan([slots], fields);
        bool isHourly = periods.Max(p => p.Slot.Hours) <= 1;
        var chances = SlotSeries.From(periods.SelectMany(p => p.Chances()), fileName, "probabilityOfPrecipitation");
        return new()
        {
            FileName = fileName,
            Issued = fields.Need("updateTime").Moment(),
            Elevation = ElevationOf(fields),
            Place = DocumentPlace.Of(document),
            Blocks = isHourly
                ? RainBlocks.Cut(SlotSeries.Empty, chances)
                : [.. periods.OrderBy(p => p.Slot.Start).Select(p => new RainBlock(p.Slot, p.Chance ?? 0, null))],
            UnmentionedChances = isHourly ? 0 : periods.Count(p => p.Chance is null),
            High = Temperatures(p => !isHourly && p.IsDaytime),
            Low = Temperatures(p => !isHourly && !p.IsDaytime),
            Hourly = Temperatures(_ => isHourly),
        };

        SlotSeries Temperatures(Func<ForecastPeriod, bool> isWanted) =>
            SlotSeries.From(
                periods.Where(isWanted).Select(p => new SlotValue(p.Slot, p.Celsius, p.Line)),
                fileName,
                "temperature"
            );
    }

    /// <summary>Reads the forecast by half days or by hours from a stream, which stays open.</summary>
    /// <param name="stream">The document in UTF-8.</param>
    /// <param name="fileName">Name used in messages.</param>
    /// <returns>The forecast; it tells chances and temperatures, and no amounts of rain.</returns>
    /// <exception cref="DataFormatException">The stream holds no such document.</exception>
    public static WeatherForecast ReadPeriods(Stream stream, string fileName) =>
        ReadPeriods(WeatherText.Read(stream, fileName), fileName);

    /// <summary>Makes a forecast of lines typed by hand.</summary>
    /// <param name="lines">Days or half days, in any order; no two may speak of the same hours.</param>
    /// <param name="zone">Time zone of the place.</param>
    /// <param name="name">What it was typed from, used in messages.</param>
    /// <returns>The forecast.</returns>
    /// <exception cref="ArgumentException">No line, a low above its high, or two lines for the same hours.</exception>
    public static WeatherForecast FromLines(IReadOnlyList<TypedForecastLine> lines, TimeZoneInfo zone, string name = "as typed")
    {
        Guard.NotEmpty(lines);
        ArgumentNullException.ThrowIfNull(zone);
        var typed = lines.Select(l => (Line: l, Slot: SlotOf(l, zone))).OrderBy(t => t.Slot.Start).ToList();
        for (int i = 0; i < typed.Count; i++)
        {
            if (i > 0 && typed[i].Slot.Start < typed[i - 1].Slot.End)
            {
                string date = typed[i].Line.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
                throw new ArgumentException($"Two lines speak of the same hours of {date}.", nameof(lines));
            }

            if (typed[i].Line is { High.DegreesCelsius: var high, Low.DegreesCelsius: var low } && low > high)
            {
                throw new ArgumentException("A low must not be above its high.", nameof(lines));
            }
        }

        SlotSeries Values(Func<TypedForecastLine, Temperature?> of) =>
            SlotSeries.From(
                from t in typed
                let value = of(t.Line)
                where value is not null
                select new SlotValue(t.Slot, value.Value.DegreesCelsius),
                name,
                nameof(lines)
            );

        return new()
        {
            FileName = name,
            Blocks =
            [
                .. typed.Where(t => t.Line.Chance is not null || t.Line.Rain is not null).Select(t => Block(t.Line, t.Slot)),
            ],
            High = Values(l => l.High),
            Low = Values(l => l.Low),
        };
    }

    private static RainBlock Block(TypedForecastLine line, TimeSlot slot) =>
        new(slot, line.Chance?.Value, line.Rain is { Millimeters: var millimeters } ? millimeters : null);

    private static TimeSlot SlotOf(TypedForecastLine line, TimeZoneInfo zone)
    {
        ArgumentNullException.ThrowIfNull(line);
        TimeOnly morning = new(6, 0),
            evening = new(18, 0);
        return line.Part switch
        {
            TypedForecastPart.Daytime => new(
                TimeSlot.StartOf(line.Date, morning, zone),
                TimeSlot.StartOf(line.Date, evening, zone)
            ),
            TypedForecastPart.Night => new(
                TimeSlot.StartOf(line.Date, evening, zone),
                TimeSlot.StartOf(line.Date.AddDays(1), morning, zone)
            ),
            _ => TimeSlot.OfDate(line.Date, zone),
        };
    }

    private static Length? ElevationOf(WeatherJson fields)
    {
        if (
            fields.Find("elevation") is not { IsObject: true } elevation
            || elevation.Find("value") is not { IsNull: false } value
        )
        {
            return null;
        }

        var unit = elevation.Need("unitCode");
        return WeatherUnit.Bare(unit.Text()) == "m"
            ? Length.FromMeters(WeatherRanges.Check(value.Number(), -500, 9000, "m", value.Problem))
            : throw unit.Problem($"unknown unit '{IsoInterval.Shortened(unit.Text())}'");
    }

    private static void CheckSpan(IReadOnlyList<SlotSeries> all, WeatherJson fields)
    {
        var slots = all.SelectMany(s => s.Values).Select(v => v.Slot).ToList();
        if (slots.Count > 0 && (slots.Max(s => s.End) - slots.Min(s => s.Start)).TotalDays > LongestDays)
        {
            throw fields.Problem(FormattableString.Invariant($"the forecast reaches over more than {LongestDays} days"));
        }
    }
}
