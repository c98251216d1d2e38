namespace DesignSearch.Parts.Catalogues;

/// <summary>A part of a kind of its own that senses and switches, and draws current for it.</summary>
public interface IControlPart : IPart
{
    /// <summary>Supply [V].</summary>
    double Volts { get; }

    /// <summary>What it draws [W].</summary>
    double Watts { get; }
}
