using PlotAgronomy.Seeds;

namespace PlotAgronomy.Calendar;

/// <summary>What the first freezes do to a kind.</summary>
internal static class KindHardiness
{
    extension(CropKind kind)
    {
        /// <summary>A kind that overwinters, or stands cold far below the first freezes, grows on after them.</summary>
        internal bool StopsAtFrost =>
            kind.Hardiness switch
            {
                null => true,
                { Kind: ColdLimitKind.Kill, LimitTo: { DegreesFahrenheit: var milder } } => milder
                    > CalendarConstants.All["hardy-to"],
                _ => false,
            };
    }
}
