using PlotAgronomy.Reference;

namespace PlotAgronomy.Calendar;

/// <summary>How long a smother crop stands before it is killed.</summary>
internal sealed class SmotherCrop
{
    private static readonly Lazy<IReadOnlyDictionary<string, SmotherCrop>> ByKind = Table.Keyed(
        "Calendar/Data/smother-crops.csv",
        row => row.Text("kind_id"),
        row => new SmotherCrop(row)
    );

    private readonly int low;
    private readonly int high;
    private readonly int? early;

    private SmotherCrop(CsvRow row)
    {
        low = row.Integer("low_days");
        high = row.Integer("high_days");
        early = (int?)row.NumberOrNull("early_days");
        Origin = row.Origin();
    }

    internal Origin Origin { get; }

    internal static SmotherCrop? Of(CropKind kind) => ByKind.Value.GetValueOrDefault(kind.Id);

    /// <summary>Fewest and most days, by the day it is sown: in the cool of late spring it takes longer.</summary>
    internal (int Low, int High) DaysFrom(DateOnly sown) =>
        early is { } late && sown.DayOfYear <= CalendarConstants.Days("smother-early-to") ? (late, late) : (low, high);
}
