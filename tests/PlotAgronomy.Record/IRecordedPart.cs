namespace PlotAgronomy.Record;

/// <summary>A part of the record with a table of its own.</summary>
internal interface IRecordedPart
{
    string Name { get; }

    void Record(Recorder recorder);
}

/// <summary>A part that draws its inputs; before they are recorded it makes sure that they cover what they should.</summary>
internal interface ICheckedPart : IRecordedPart
{
    /// <summary>Throws when something is left out.</summary>
    /// <param name="folder">Folder of this project.</param>
    void Check(string folder);
}
