namespace PlotAgronomy.Sheets;

/// <summary>Where a section stands.</summary>
internal enum SheetPart
{
    /// <summary>On a sheet that has no front and back.</summary>
    Body,

    /// <summary>On the front, which is carried to the field.</summary>
    Front,

    /// <summary>On the back, which holds the numbers behind the front.</summary>
    Back,

    /// <summary>Only where the working is shown.</summary>
    Work,
}
