using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Weather;

/// <summary>Values of one station in the layouts of the Global Historical Climatology Network, daily: rows of eight fields, or
/// lines of a month.</summary>
/// <remarks>Rain in tenths of mm, temperatures in tenths of C, wind in tenths of m/s; -9999 is missing, and a value whose quality
/// flag is set failed a check of the network.</remarks>
internal sealed class DailyObservations(string file)
{
    private const int Fields = 8;
    private const int MonthLine = 269;
    private const int Missing = -9999;

    private readonly SortedDictionary<DateOnly, DayDraft> days = [];
    private readonly HashSet<(DateOnly, string)> seen = [];
    private string? station;

    internal int Dropped { get; private set; }

    internal ImmutableArray<WeatherDay> Read(string text)
    {
        WeatherTable.CheckLines(text, file);
        int line = 0;
        foreach (var raw in text.AsSpan().TrimStart('\uFEFF').EnumerateLines())
        {
            line++;
            if (raw.IsWhiteSpace())
            {
                continue;
            }

            if (raw.Contains(','))
            {
                ReadRow(raw.ToString().Split(','), line);
            }
            else
            {
                ReadMonth(raw.ToString(), line);
            }
        }

        return days.Count > 0
            ? [.. days.Select(d => d.Value.Day(d.Key))]
            : throw new DataFormatException(file, 1, null, "holds no rain and no temperature");
    }

    private void ReadRow(string[] fields, int line)
    {
        if (fields.Length != Fields)
        {
            throw new DataFormatException(file, line, null, $"expected {Fields} fields, found {fields.Length}");
        }

        CheckStation(fields[0], line);
        if (!IsoInterval.TryDate(fields[1], "yyyyMMdd", out var date))
        {
            throw new DataFormatException(file, line, "date", "expected a date such as 20130903");
        }

        Put(date, fields[2], fields[3], fields[5], line);
    }

    private void ReadMonth(string text, int line)
    {
        string padded = text.Length < MonthLine ? text.PadRight(MonthLine) : text;
        if (
            padded.Length != MonthLine
            || !int.TryParse(padded.AsSpan(11, 4), NumberStyles.None, CultureInfo.InvariantCulture, out int year)
            || !int.TryParse(padded.AsSpan(15, 2), NumberStyles.None, CultureInfo.InvariantCulture, out int month)
            || !IsoInterval.IsOfWeather(year)
            || month is < 1 or > 12
        )
        {
            throw new DataFormatException(file, line, null, "expected a row of 8 fields or a month's line of 269 characters");
        }

        CheckStation(padded[..11], line);
        for (int day = 1; day <= DateTime.DaysInMonth(year, month); day++)
        {
            int at = 21 + (8 * (day - 1));
            Put(new(year, month, day), padded.Substring(17, 4), padded.Substring(at, 5), padded.Substring(at + 6, 1), line);
        }
    }

    private void CheckStation(string id, int line)
    {
        station ??= id;
        if (station != id)
        {
            throw new DataFormatException(file, line, "station", "the file holds more than one station");
        }
    }

    private void Put(DateOnly date, string element, string value, string qualityFlag, int line)
    {
        if (element is not ("PRCP" or "TMAX" or "TMIN" or "AWND"))
        {
            return;
        }

        if (!int.TryParse(value.Trim(), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int tenths))
        {
            throw new DataFormatException(file, line, element, "expected a whole number of tenths");
        }

        if (!seen.Add((date, element)))
        {
            throw new DataFormatException(file, line, element, "the value of this day stands twice");
        }

        if (!days.TryGetValue(date, out var day))
        {
            days.Add(date, day = new(file, line));
        }

        if (tenths == Missing)
        {
            return;
        }

        if (!string.IsNullOrWhiteSpace(qualityFlag))
        {
            Dropped++;
            return;
        }

        double held = tenths / 10.0;
        DataFormatException Problem(string problem) => new(file, line, element, problem);
        switch (element)
        {
            case "PRCP":
                day.Rain = WeatherRanges.Check(held, 0, WeatherRanges.MostRain, "mm", Problem);
                break;
            case "TMAX":
                day.High = WeatherRanges.Check(held, WeatherRanges.Coldest, WeatherRanges.Hottest, "C", Problem);
                break;
            case "TMIN":
                day.Low = WeatherRanges.Check(held, WeatherRanges.Coldest, WeatherRanges.Hottest, "C", Problem);
                break;
            default:
                day.Wind = WeatherRanges.Check(held, 0, WeatherRanges.MostWind, "m/s", Problem);
                break;
        }
    }
}
