using System.Globalization;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using PlotAgronomy.Planning;
using CalendarFile = Ical.Net.Calendar;

namespace PlotAgronomy.Sample.Output;

/// <summary>The tasks of a season as iCalendar (RFC 5545): whole days, names that stay the same, no clock.</summary>
internal static class SeasonFile
{
    /// <param name="answers">Answers of the plan.</param>
    /// <param name="stamp">Day that the entries are stamped with.</param>
    internal static string Of(PlotAnswers answers, DateOnly stamp)
    {
        var file = new CalendarFile { ProductId = "-//PlotAgronomy//Season of a plot//EN" };
        foreach (var work in answers.SeasonWork.Where(w => w.Task is { Earliest: not null, Latest: not null }))
        {
            file.Events.Add(Entry(answers, work, stamp));
        }

        return new CalendarSerializer().SerializeToString(file)!;
    }

    private static CalendarEvent Entry(PlotAnswers answers, SeasonWork work, DateOnly stamp) =>
        new()
        {
            Uid = $"{Word(answers.Plan.Plot.Name)}-{Year(answers)}-{work.Task.Id}@plot-agronomy",
            DtStamp = new CalDateTime(stamp.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc), "UTC"),
            Start = new CalDateTime(work.Task.Earliest!.Value),
            End = new CalDateTime(work.Task.Latest!.Value.AddDays(1)),
            Summary = work.Task.Title,
            Description = string.Join(
                " ",
                new[] { work.Task.Reason, string.Join(", ", work.Materials), $"Source: {work.Task.Origin}." }.Where(t =>
                    t.Length > 0
                )
            ),
        };

    /// <summary>The year of planting; without one that of the first task with a day.</summary>
    private static string Year(PlotAnswers answers)
    {
        var day = answers.Plan.PlantingDate ?? answers.SeasonWork.Select(w => w.Task.Latest).OfType<DateOnly>().First();
        return day.Year.ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>A name as one word of small letters, numbers and hyphens.</summary>
    private static string Word(string name) =>
        string.Join(
            '-',
            string.Concat(name.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : ' '))
                .Split(' ', StringSplitOptions.RemoveEmptyEntries)
        );
}
