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
    /// <summary>The planting date, else the day of the first task that has one; null where none has.</summary>
    internal static DateOnly? FirstDay(PlotAnswers answers) =>
        WithDay(answers).Any() ? answers.Plan.PlantingDate ?? WithDay(answers).Min(w => w.Task.Earliest) : null;

    /// <summary>What is to be done on no day that is known.</summary>
    internal static IEnumerable<SeasonWork> WithoutDay(PlotAnswers answers) => answers.SeasonWork.Where(w => !HasDay(w));

    /// <param name="answers">Answers of the plan.</param>
    /// <param name="stamp">Day that the entries are stamped with.</param>
    internal static string Of(PlotAnswers answers, DateOnly stamp)
    {
        var file = new CalendarFile { ProductId = "-//PlotAgronomy//Season of a plot//EN" };
        foreach (var work in WithDay(answers))
        {
            file.Events.Add(Entry(answers, work, stamp));
        }

        return new CalendarSerializer().SerializeToString(file)!;
    }

    private static IEnumerable<SeasonWork> WithDay(PlotAnswers answers) => answers.SeasonWork.Where(HasDay);

    private static bool HasDay(SeasonWork work) => work.Task is { Earliest: not null, Latest: not null };

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
    private static string Year(PlotAnswers answers) => FirstDay(answers)!.Value.Year.ToString(CultureInfo.InvariantCulture);

    /// <summary>A name as one word of small letters, numbers and hyphens.</summary>
    private static string Word(string name) =>
        string.Join(
            '-',
            string.Concat(name.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : ' '))
                .Split(' ', StringSplitOptions.RemoveEmptyEntries)
        );
}
